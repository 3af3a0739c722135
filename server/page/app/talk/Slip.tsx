import { useState } from 'preact/hooks';
import { isDoubtful } from '../../../../parser/doubtful.ts';
import type { Fact } from '../../../../parser/types.ts';
import type { JobView, Reply } from '../../../http/api.ts';
import { isUnheard } from '../../../voice/unheard.ts';
import { clockOf, daysSpelt } from '../kit/clock.ts';
import { withdraw } from '../kit/notes.ts';
import type { ShownTalk } from '../kit/pending.ts';
import type { Parcel } from '../kit/phoneStore.ts';
import { ReadAloud } from '../kit/ReadAloud.tsx';
import { factWords, kindWord } from '../kit/words.ts';
import { Enclosures } from './Enclosures.tsx';
import { isTimed, secondWords } from './transcripts.ts';

type ReplyLine = Reply['lines'][number];

/** The other lines begin with a word of their own. */
const lineWord: Partial<Record<ReplyLine['kind'], string>> = { check: 'Check:', caution: 'Mind:' };

interface Props {
  slip: ShownTalk;
  view: JobView;
  parcels: readonly Parcel[];
  /** A fact was tapped: its place in the note. */
  onFact: (index: number) => void;
  onTypeUp: () => void;
  /** Its words are to be put right before they go out. */
  onReword: () => void;
}

/** A recorded talk brings more facts than a thumb can pass by; the others are a tap away. */
const factsAtFirst = 12;
/** Above this many characters, words are folded away. */
const longWords = 1200;

const factsOf = (slip: ShownTalk) => slip.facts.flatMap((fact, index) => (fact ? [{ fact, index }] : []));

/** One note as it was said, and under it what was understood. */
export function Slip({ slip, view, parcels, onFact, onTypeUp, onReword }: Props) {
  const facts = slip.takenBack ? [] : factsOf(slip);
  return (
    <article class="slip" data-note={slip.id}>
      <p class="margin">
        <span>{clockOf(slip.saidAt)}</span> <span>{slip.by}</span>
      </p>
      <div class="said">
        {slip.area && <p class="stood">In: {slip.area}</p>}
        {slip.text.length > longWords || isTimed(slip.text) ? (
          <Long text={slip.text} facts={facts.map(({ fact }) => fact)} />
        ) : (
          <p class="words">
            <Underlined text={slip.text} facts={facts.map(({ fact }) => fact)} />
          </p>
        )}
        <Enclosures jobId={view.job.id} photoIds={slip.photoIds} recordingId={slip.recordingId} parcels={parcels} />
      </div>
      {isUnheard(slip) && !slip.takenBack && (
        <button type="button" class="plain more" onClick={onTypeUp}>
          Type what it says
        </button>
      )}
      {slip.unsent && !slip.takenBack && (
        <p class="not-sent">
          {slip.unsent.parked !== null
            ? 'Not taken, as told above.'
            : slip.facts.length
              ? 'Not sent yet. Read by this phone:'
              : 'Not sent yet.'}
        </p>
      )}
      {slip.takenBack ? (
        <p class="not-sent">Taken back: its words are kept, nothing of it counts.</p>
      ) : (
        <Understood slip={slip} view={view} onFact={onFact} />
      )}
      {slip.unsent && !slip.takenBack && <Waits slip={slip} waits={slip.unsent} onReword={onReword} />}
    </article>
  );
}

/** A note that has not gone out can still be put right, or kept from going. */
function Waits({
  slip,
  waits,
  onReword,
}: Pick<Props, 'slip' | 'onReword'> & { waits: NonNullable<ShownTalk['unsent']> }) {
  return (
    <div class="waits">
      {!isUnheard(slip) && (
        <button type="button" class="plain" onClick={onReword}>
          Change words
        </button>
      )}
      <button type="button" class="plain" onClick={() => void withdraw(waits)}>
        Take out<span class="hidden"> of what waits: {clockOf(slip.saidAt)}</span>
      </button>
    </div>
  );
}

/** What came of a note: the reply, the one question, and each fact to be put right by a tap. */
function Understood({ slip, view, onFact }: Pick<Props, 'slip' | 'view' | 'onFact'>) {
  const { reply } = slip;
  const facts = factsOf(slip);
  const [all, setAll] = useState(false);
  const spoken = [...reply.lines.map((line) => daysSpelt(line.text, view.today)), ...(reply.ask ? [reply.ask] : [])];
  return (
    <>
      {reply.unread && <p class="not-sent">Kept, but it could not be read. It will be read again later.</p>}
      {reply.lines.length > 0 && (
        <ul class="reply">
          {reply.lines.map((line) => (
            <li key={line.text} class={`l-${line.kind}`}>
              {lineWord[line.kind] && <i>{lineWord[line.kind]}</i>}
              {daysSpelt(line.text, view.today)}
            </li>
          ))}
        </ul>
      )}
      {reply.ask && (
        <p class="ask">
          <i>One question</i>
          {reply.ask}
        </p>
      )}
      {facts.length > 0 && (
        <ul class="facts" aria-label="Understood; tap one to put it right">
          {facts.slice(0, all ? facts.length : factsAtFirst).map(({ fact, index }) => (
            <li key={index}>
              <button type="button" class={`fact k-${fact.kind}`} onClick={() => onFact(index)}>
                <i>
                  {kindWord(fact)}
                  {isDoubtful(fact) && '?'}
                  {fact.at !== undefined && ` at ${secondWords(fact.at)}`}
                </i>
                {factWords(fact, view.today)}
              </button>
            </li>
          ))}
        </ul>
      )}
      {!all && facts.length > factsAtFirst && (
        <button type="button" class="plain more" onClick={() => setAll(true)}>
          {facts.length - factsAtFirst} more understood
        </button>
      )}
      <ReadAloud lines={spoken} of={`the reply of ${clockOf(slip.saidAt)}`} />
    </>
  );
}

/** Long or timed talk, drawn when it is asked for. */
function Long({ text, facts }: { text: string; facts: readonly Fact[] }) {
  const [open, setOpen] = useState(false);
  return (
    <details class="long" onToggle={(e) => setOpen(e.currentTarget.open)}>
      <summary>
        <b>{isTimed(text) ? 'Recorded talk' : 'Long note'}</b>, {text.trim().split('\n').length} lines
      </summary>
      {open && (
        <p class="words">
          <Underlined text={text} facts={facts} />
        </p>
      )}
    </details>
  );
}

/** The note's own words, each fact underlined in its kind's stroke. Where facts overlap, the shorter one's stroke shows. */
function Underlined({ text, facts }: { text: string; facts: readonly Fact[] }) {
  const cuts = [...new Set([0, text.length, ...facts.flatMap((f) => [f.start, f.end])])].sort((a, b) => a - b);
  return (
    <>
      {cuts.slice(0, -1).map((from, k) => {
        const until = cuts[k + 1]!;
        const over = facts.filter((f) => f.start <= from && f.end >= until);
        const fact = over.sort((a, b) => a.end - a.start - (b.end - b.start))[0];
        const words = text.slice(from, until);
        // What is left between two shorter facts may be a comma, which no stroke helps.
        return fact && /[\p{L}\d]/u.test(words) ? (
          <u key={from} class={`k-${fact.kind}`}>
            {words}
          </u>
        ) : (
          words
        );
      })}
    </>
  );
}
