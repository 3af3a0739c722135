import { useState } from 'preact/hooks';
import { readAgainCall, rereadingCall, takeReadingBackCall } from '../kit/calls.ts';
import { daysSpelt } from '../kit/clock.ts';
import { say, sync, wordsOf } from '../kit/model.ts';

/** Says what happened to a job's notes; one tap takes it back, and another brings it again. */
async function told(words: string, other: string, jobId: string, reading: string | null): Promise<void> {
  await sync();
  const takeBack = async () => {
    const back = await takeReadingBackCall(jobId, reading!);
    await told(other, words, jobId, back.reading);
  };
  say(words, reading === null ? null : takeBack);
}

type Looked = { difference: string[] } | { wrong: string };

/** Reads a job's notes again, as after a new version or a word taught late: first what would change, then at a second tap the change. */
export function ReadAgain({ jobId, today }: { jobId: string; today: string }) {
  const [looked, setLooked] = useState<Looked | null>(null);
  const [busy, setBusy] = useState(false);
  const tried = async (work: () => Promise<Looked | null>) => {
    setBusy(true);
    setLooked(await work().catch((error) => ({ wrong: wordsOf(error) })));
    setBusy(false);
  };
  const look = () => tried(() => rereadingCall(jobId));
  const readAgain = () =>
    tried(async () => {
      const { reading } = await readAgainCall(jobId);
      await told('The notes were read again.', 'The notes stand as before.', jobId, reading);
      return null;
    });
  const difference = looked && 'difference' in looked ? looked.difference : [];
  return (
    <section class="area">
      <h2>Read the notes again</h2>
      <p>
        Notes stand as they were read when they came. Read again, they are taken as a newer version and your own words
        would take them. What a hand put right stays.
      </p>
      <div aria-live="polite">
        {looked && 'wrong' in looked && <p class="problem">Not read again. {looked.wrong}</p>}
        {looked && 'difference' in looked && (
          <p>
            {difference.length
              ? 'This would change:'
              : 'Nothing would change: every note stands as it would be read now.'}
          </p>
        )}
      </div>
      {difference.length > 0 && (
        <ul class="plain-list difference">
          {difference.map((line) => (
            <li key={line} class={line.startsWith('+') ? 'comes' : 'goes'}>
              <i>{line.startsWith('+') ? 'comes' : 'goes'}</i> {daysSpelt(line.slice(2), today)}
            </li>
          ))}
        </ul>
      )}
      <div class="row">
        {difference.length > 0 ? (
          <>
            <button type="button" class="primary" disabled={busy} onClick={() => void readAgain()}>
              Change it so
            </button>
            <button type="button" class="plain" disabled={busy} onClick={() => setLooked(null)}>
              Leave it
            </button>
          </>
        ) : (
          <button type="button" class="plain" disabled={busy} onClick={() => void look()}>
            {busy ? 'Reading…' : 'See what would change'}
          </button>
        )}
      </div>
    </section>
  );
}
