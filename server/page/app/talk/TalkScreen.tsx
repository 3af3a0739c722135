import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { JobView } from '../../../http/api.ts';
import { groupBy } from '../../../talk/groups.ts';
import { isUnheard } from '../../../voice/unheard.ts';
import { dayWords } from '../kit/clock.ts';
import { useShown } from '../kit/hooks.ts';
import { type ShownTalk, talksShown } from '../kit/pending.ts';
import { capital } from '../kit/words.ts';
import { Composer } from './Composer.tsx';
import { FactSheet } from './FactSheet.tsx';
import { RewordSheet } from './RewordSheet.tsx';
import { Slip } from './Slip.tsx';
import { useShowingLast } from './showingLast.ts';
import { TypeUpSheet } from './TypeUpSheet.tsx';

/** An old phone draws this many slips in a blink; earlier ones are a tap away. */
const atFirst = 12;

export const nothingKnown =
  'No job has been opened on this phone yet, and the server does not answer. Try again where there is signal.';

/** The conversation: slips of what was said, what was understood, and the box to say more. */
export function TalkScreen({ view, unknown }: { view: JobView | null; unknown: boolean }) {
  const { talks, parcels, readings } = useShown();
  const [fact, setFact] = useState<{ noteId: string; index: number } | null>(null);
  const [typing, setTyping] = useState<string | null>(null);
  const [rewording, setRewording] = useState<ShownTalk['unsent']>(null);
  const log = useRef<HTMLDivElement>(null);
  const [most, setMost] = useState(atFirst);
  // History is there before the region goes live, so that only what is new is announced.
  const [live, setLive] = useState(false);
  const slips = useMemo(
    () => (view ? talksShown(talks, parcels, view.job.id, readings) : []),
    [talks, parcels, readings, view?.job.id],
  );
  const unheard = slips.filter((slip) => isUnheard(slip) && !slip.takenBack);
  const typed = slips.find((s) => s.id === typing);
  const last = slips.at(-1);
  useShowingLast(log, [last?.id, last?.facts.length, last?.reply.lines.length]);
  useEffect(() => setLive(true), []);
  const opened = fact && slips.find((s) => s.id === fact.noteId);
  const chosen = opened?.facts[fact!.index];
  return (
    <div class="talk">
      <h1 class="hidden">Talk</h1>
      <div class="slips" ref={log} role="log" aria-live={live ? 'polite' : 'off'} aria-label="Notes and replies">
        {unknown && <p class="empty">{nothingKnown}</p>}
        {view && !slips.length && (
          <div class="empty">
            <p>
              Say what you did, what you found and what you need, the way you would tell a partner. One note at the end
              of a task is enough.
            </p>
            <p class="quote">
              “Closet door planed, it shuts now. Outlet by the window is dead, have the electrician look at it Thursday.
              Need two boxes of trim screws.”
            </p>
          </div>
        )}
        {slips.length > most && (
          <button type="button" class="plain earlier" onClick={() => setMost(most * 4)}>
            Earlier notes
          </button>
        )}
        {view &&
          groupBy(slips.slice(-most), (slip) => slip.saidAt.slice(0, 10)).map(([day, said]) => (
            <section key={day}>
              <h2 class="day-rule">{capital(dayWords(day, view.today))}</h2>
              {said.map((slip) => (
                <Slip
                  key={slip.id}
                  slip={slip}
                  view={view}
                  parcels={parcels}
                  onFact={(index) => setFact({ noteId: slip.id, index })}
                  onTypeUp={() => setTyping(slip.id)}
                  onReword={() => setRewording(slip.unsent)}
                />
              ))}
            </section>
          ))}
      </div>
      {unheard.length > 0 && (
        <button type="button" class="plain unheard" onClick={() => setTyping(unheard[0]!.id)}>
          {unheard.length === 1 ? '1 recording' : `${unheard.length} recordings`} to type
        </button>
      )}
      <Composer view={view} />
      {view && typed && <TypeUpSheet key={typed.id} slip={typed} view={view} onClose={() => setTyping(null)} />}
      {view && rewording && <RewordSheet waits={rewording} areas={view.job.areas} onClose={() => setRewording(null)} />}
      {view && fact && chosen && (
        <FactSheet
          noteId={fact.noteId}
          index={fact.index}
          fact={chosen}
          waits={opened.unsent}
          view={view}
          onClose={() => setFact(null)}
        />
      )}
    </div>
  );
}
