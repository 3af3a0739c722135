import type { Decision } from '../types.ts';
import type { Frame } from './frames.ts';
import { base } from './make.ts';
import { meantAt } from './naming/meant.ts';
import { isPerson, phrase, type Talk, thingIn } from './talk.ts';

const DROPS =
  /\b(forget|forget about|scrap|skip|never mind|nevermind|no longer|don't want|doesn't want|changed (?:her|his|their) mind|cancel|cancelled|canceled|leave as is|ok(?:ay)? w(?:ith|\/) it|lose the|forget it)\b/;
const CHOICES =
  /\b(went with|going with|goes with|go with|picked|chose|choose|decided|settled on|approved|signed off on|wants? the|prefers?|would rather|rather have|likes? the|is fine with|she's fine|he's fine|good with)\b/;

/** What the owner or the crew settled: a colour, a layout, something dropped. */
export function readDecisions(talk: Talk): Decision[] {
  return talk.frames.flatMap((frame, at) => {
    const said = frame.chunks.map((c) => c.word).join(' ');
    if (DROPS.test(said))
      return [
        {
          ...base(talk, frame, 'decision/drop'),
          kind: 'decision' as const,
          what: phrase(frame.chunks),
          drops: dropped(talk, frame, at),
        },
      ];
    if (
      CHOICES.test(said) &&
      (isPerson(frame.subject) || frame.subject.length === 0) &&
      frame.predicate !== 'imperative'
    )
      return [
        { ...base(talk, frame, 'decision/choice'), kind: 'decision' as const, what: phrase(frame.chunks), drops: null },
      ];
    return [];
  });
}

function dropped(talk: Talk, frame: Frame, at: number): string | null {
  const thing = thingIn(frame.chunks);
  const named = thing.length ? thing : meantAt(talk, at);
  return named.length ? phrase(named) : null;
}
