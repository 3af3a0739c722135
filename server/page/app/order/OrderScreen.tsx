import type { JobView } from '../../../http/api.ts';
import type { OrderLine, OrderState } from '../../../jobs/types.ts';
import { groupBy } from '../../../talk/groups.ts';
import { perhapsToBuy, shortDay, usesText } from '../../../talk/wording.ts';
import { paperPath } from '../kit/calls.ts';
import { daysSpelt } from '../kit/clock.ts';
import { change, say } from '../kit/model.ts';
import { exactOf } from '../kit/typedNumber.ts';
import { amountWords, capital, fractionWords, goodsOf, lineWords, quantityWords, stateWords } from '../kit/words.ts';
import { OrderPrices } from './Prices.tsx';

/** What has still to be got, by the counter that sells it. */
export function OrderScreen({ view }: { view: JobView }) {
  const { order, onHand } = view.state;
  const toBuy = order.filter((line) => line.state === 'to buy');
  const unsure = order.filter((line) => line.state === 'unsure');
  const sure = order.filter((line) => line.state !== 'unsure');
  return (
    <div class="order">
      <div class="title-row">
        <h1>Order</h1>
        <a class="plain screen-only" href="#reckon">
          Work out how much
        </a>
      </div>
      <p class="paper-only">
        {view.job.name}. Shopping list of {shortDay(view.today)}
      </p>
      {!order.length && <p class="empty">Nothing to buy. What you say you need lands here.</p>}
      {groupBy(sure, (line) => line.counter).map(([counter, lines]) => (
        <section key={counter} class="area">
          <h2>{counter}</h2>
          <ul class="items">
            {lines.map((line) => (
              <Line key={line.key} line={line} today={view.today} />
            ))}
          </ul>
        </section>
      ))}
      {unsure.length > 0 && (
        <section class="area">
          <h2>{perhapsToBuy}</h2>
          <p class="empty">Asked for a while ago, or only in passing. Open a line to put it back on the list.</p>
          <ul class="items">
            {unsure.map((line) => (
              <Line key={line.key} line={line} today={view.today} />
            ))}
          </ul>
        </section>
      )}
      <OrderPrices prices={view.prices} />
      {onHand.length > 0 && (
        <section class="area screen-only">
          <h2>On hand</h2>
          <ul class="plain-list">
            {onHand.map((thing) => (
              <li key={`${thing.item} ${thing.size}`}>
                {[quantityWords(thing.quantity, thing.unit), goodsOf(thing), thing.size].filter(Boolean).join(' ')}
              </li>
            ))}
          </ul>
        </section>
      )}
      {toBuy.length + unsure.length > 0 && (
        <div class="row screen-only">
          <button type="button" class="plain" onClick={() => void share(view.job.name, toBuy, unsure)}>
            Share as text
          </button>
          <button type="button" class="plain" onClick={() => print()}>
            Print list
          </button>
          <a class="plain" href={paperPath(view.job.id, 'shopping')} target="_blank" rel="noopener">
            List as PDF
          </a>
        </div>
      )}
    </div>
  );
}

function Line({ line, today }: { line: OrderLine; today: string }) {
  const set = (state: OrderState) =>
    change({ kind: 'setOrder', line: line.key, state }, `${capital(line.item)}: ${stateWords({ state })}.`);
  return (
    <li class={`item s-${line.state.replace(' ', '-')}`}>
      <Mark line={line} state="bought" onSet={set} />
      <details class="line">
        <summary>
          <span class="task-words">
            <b class="amount">{amountWords(line)}</b> {goodsOf(line)}
            {line.size && !line.item.includes(line.size) && `, ${line.size}`}
            {line.specs.length > 0 && `, ${line.specs.join(', ')}`} {usesText(line.uses)}
          </span>
          <span class="task-notes">
            {line.state !== 'to buy' && <i>{stateWords(line)}</i>}
            <span class="because">{daysSpelt(line.because, today)}</span>
          </span>
        </summary>
        <form
          class="row"
          onSubmit={(e) => {
            e.preventDefault();
            const quantity = exactOf(String(new FormData(e.currentTarget).get('quantity')));
            if (quantity === null) say('Type a number, such as 3 or 2-1/2.');
            else
              void change({ kind: 'setOrder', line: line.key, quantity }, `${line.item}: ${fractionWords(quantity)}.`);
          }}
        >
          <label>
            How many
            <input name="quantity" defaultValue={line.quantity === null ? '' : fractionWords(line.quantity)} />
          </label>
          <button type="submit" class="plain">
            Set
          </button>
          {line.state !== 'ordered' && (
            <button type="button" class="plain" onClick={() => void set('ordered')}>
              Ordered
            </button>
          )}
          {line.state !== 'to buy' && (
            <button type="button" class="plain" onClick={() => void set('to buy')}>
              {line.state === 'unsure' ? 'Still to buy' : 'To buy again'}
            </button>
          )}
        </form>
        {line.history.length > 0 && (
          <ol class="history">
            {line.history.map((event) => (
              <li key={`${event.entry}-${event.what}`}>
                <span>
                  {shortDay(event.at)}
                  {event.by && `, ${event.by}`}: {event.what}
                </span>
                {event.words && <q>{event.words}</q>}
              </li>
            ))}
          </ol>
        )}
      </details>
      <Mark line={line} state="have" onSet={set} />
    </li>
  );
}

/** A box under each thumb: bought on the left, there already on the right. */
function Mark({
  line,
  state,
  onSet,
}: {
  line: OrderLine;
  state: 'bought' | 'have';
  onSet: (state: OrderState) => Promise<void>;
}) {
  const on = line.state === state;
  return (
    <button type="button" class={`tick t-${state}`} aria-pressed={on} onClick={() => void onSet(on ? 'to buy' : state)}>
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <rect x="2" y="2" width="20" height="20" />
        {on && <path d="M6 12.5L10.5 17L18 7" />}
      </svg>
      <span>
        {state}
        <span class="hidden">: {line.item}</span>
      </span>
    </button>
  );
}

/**
 * Hands the list to whatever the phone shares with; else to the clipboard; else says how. It goes by counter, and last
 * comes what may no longer be wanted, so that nobody drives twice for it.
 */
async function share(jobName: string, toBuy: readonly OrderLine[], unsure: readonly OrderLine[]): Promise<void> {
  const groups = groupBy(toBuy, (line) => line.counter);
  if (unsure.length) groups.push([perhapsToBuy, [...unsure]]);
  const text = [
    jobName,
    ...groups.flatMap(([title, some]) => ['', title, ...some.map((line) => `- ${lineWords(line)}`)]),
  ].join('\n');
  try {
    if (navigator.share) await navigator.share({ title: `Order, ${jobName}`, text });
    else {
      await navigator.clipboard.writeText(text);
      say('Copied as text.');
    }
  } catch (error) {
    const given = error instanceof DOMException && error.name === 'AbortError';
    if (!given) say('This phone would not share it. Print the list instead.');
  }
}
