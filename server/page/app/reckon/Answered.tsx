import { unitWord } from '../../../../parser/quantities/containers.ts';
import { sendNote } from '../kit/notes.ts';
import type { Answer } from '../kit/reckon.ts';
import { CheckLines } from '../trip/Checks.tsx';

/** What it comes to with its working and source, or in words why there is no answer. `goods`: how they may be ordered. */
export function Answered({ answer, goods }: { answer: Answer; goods: string | null }) {
  if (!answer.ok)
    return (
      <p class="problem" role="alert">
        {answer.why}
      </p>
    );
  if ('checks' in answer)
    return (
      <section class="area">
        <h2>Answer</h2>
        <CheckLines checks={answer.checks} />
      </section>
    );
  return (
    <section class="area">
      <h2>Answer</h2>
      <ul class="plain-list">
        {answer.buy.map((bought) => (
          <li key={bought.unit}>
            <b class="amount">{amount(bought)}</b>
          </li>
        ))}
        <li>
          {answer.working}
          {answer.assumptions.map((assumption) => (
            <small key={assumption}>Taken for granted: {assumption}.</small>
          ))}
          <small>By {answer.source}.</small>
        </li>
      </ul>
      {goods && <ToOrder buy={answer.buy} goods={goods} />}
    </section>
  );
}

type Bought = { quantity: number; unit: string };

/** `9 boxes`, `3 sticks of 8 ft`; single things are only counted. */
const amount = ({ quantity, unit }: Bought): string =>
  unit === 'each' ? String(quantity) : `${quantity} ${unitWord(unit, quantity > 1)}`;

/** The answer goes where everything bought goes: said as a note, so that it can be put right and taken back like one. */
function ToOrder({ buy, goods }: { buy: readonly Bought[]; goods: string }) {
  const put = (named: string) => {
    const lines = buy.map((bought, k) => {
      if (k > 0) return amount(bought);
      return bought.unit === 'each' ? `${bought.quantity} ${named}` : `${amount(bought)} of ${named}`;
    });
    void sendNote(`Need ${lines.join(', ')}.`);
  };
  return (
    <form
      class="row"
      onSubmit={(e) => {
        e.preventDefault();
        put(String(new FormData(e.currentTarget).get('goods')).trim());
      }}
    >
      <label>
        Of what
        <input name="goods" required maxLength={60} defaultValue={goods} />
      </label>
      <button type="submit" class="plain">
        Put on the order
      </button>
    </form>
  );
}
