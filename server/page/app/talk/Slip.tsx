import type { Fact } from '../../../../parser/types.ts';
import type { JobView } from '../../../http/api.ts';
import { canSpeak, readAloud } from '../kit/aloud.ts';
import { photoPath, recordingPath } from '../kit/calls.ts';
import { clockOf } from '../kit/clock.ts';
import type { ShownTalk } from '../kit/pending.ts';
import { factWords, kindWord } from '../kit/words.ts';

/** The other lines begin with a word of their own. */
const lineWord = { check: 'Check:', caution: 'Mind:' } as const;
const wordFor = (kind: string) => (kind in lineWord ? lineWord[kind as keyof typeof lineWord] : null);

/** One note as it was said, and under it what was understood. */
export function Slip({ slip, view, onFact }: { slip: ShownTalk; view: JobView; onFact: (index: number) => void }) {
  const { reply } = slip;
  const spoken = [...reply.lines.map((line) => line.text), ...(reply.ask ? [reply.ask] : [])];
  return (
    <article class="slip" data-note={slip.id}>
      <p class="margin">
        <span>{clockOf(slip.saidAt)}</span> <span>{slip.by}</span>
      </p>
      <div class="said">
        <p class="words">
          <Underlined text={slip.text} facts={reply.facts} />
        </p>
        {slip.photoIds.map((id) => (
          <a key={id} class="photo" href={photoPath(view.job.id, id)} target="_blank" rel="noopener">
            <img src={photoPath(view.job.id, id)} alt="Taken with this note" loading="lazy" />
          </a>
        ))}
        {slip.recordingId && !slip.unsent && (
          // biome-ignore lint/a11y/useMediaCaption: the note's words stand beside the sound
          <audio controls preload="none" src={recordingPath(view.job.id, slip.recordingId)} />
        )}
      </div>
      {slip.unsent && (
        <p class="not-sent">
          {slip.unsent === 'waiting' ? 'Not sent yet. Read by this phone:' : `Not taken: ${slip.unsent.refused}`}
        </p>
      )}
      {reply.unread && <p class="not-sent">Kept, but it could not be read. It will be read again later.</p>}
      {reply.facts.length > 0 && (
        <ul class="facts" aria-label="Understood">
          {reply.facts.map((fact, index) => (
            <li key={index}>
              <button
                type="button"
                class={`fact k-${fact.kind}`}
                onClick={() => onFact(index)}
                disabled={slip.unsent !== null}
              >
                <i>
                  {kindWord(fact)}
                  {fact.confidence < 0.5 && '?'}
                </i>
                {factWords(fact, view.today)}
              </button>
            </li>
          ))}
        </ul>
      )}
      {reply.lines.length > 0 && (
        <ul class="reply">
          {reply.lines.map((line) => (
            <li key={line.text} class={`l-${line.kind}`}>
              {wordFor(line.kind) && <i>{wordFor(line.kind)}</i>}
              {line.text}
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
      {canSpeak() && spoken.length > 0 && (
        <button type="button" class="plain read" onClick={() => readAloud(spoken)}>
          Read aloud<span class="hidden"> the reply of {clockOf(slip.saidAt)}</span>
        </button>
      )}
    </article>
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
        return fact && words.trim() ? (
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
