import { lowered } from '../trade/words.ts';
import type { Decision, Span } from '../types.ts';
import type { Frame } from './frames.ts';
import { base } from './make.ts';
import { meantAt } from './naming/meant.ts';
import { isPerson, phrase, type Talk, thingIn } from './talk.ts';
import { inOwnWords } from './wording.ts';

/** "In the skip" is a place, "don't forget" an order. */
const DROPS =
  /(?<!\b(?:don't|dont|not|never|to) )\b(?:forget|forget about|scrap|never mind|nevermind|no longer|don't want|doesn't want|changed (?:her|his|their|my|our) mind|cancel|cancelled|canceled|leave as is|ok(?:ay)? w(?:ith|\/) it|lose the|forget it)\b|(?<!\b(?:the|a|in|into|to|our|full|this|that|one|another|big) )\bskip\b(?! (?:is|was|hire|bin|bag|full|comes|lorry))/;
/** Said of whoever it is, or of nobody. */
const CHOICES =
  /\b(?:went with|going with|goes with|go with|picked(?! up\b|(?: \w+){1,3} up\b)|chose|choose|decided|settled on|approved|signed off on|prefers?|would rather|rather have|is fine with|she's fine|he's fine)\b/;
/** Said of a person only: "looks like the drain", "still want the handrail" choose nothing. */
const WISHES = /(?<!\bstill )\bwants? the\b|\blikes? the\b|\bgood with\b/;

/** What the owner or the crew settled: a colour, a layout, something dropped. */
export function readDecisions(talk: Talk): Decision[] {
  // How far the last ban reached: "no sander, no torch near it" is one.
  let banned = 0;
  return talk.frames.flatMap((frame, at) => {
    if (frame.start < banned) return [];
    const next = talk.frames[at + 1];
    // "Owner wants | the door swung": what is wished for may be a clause of its own.
    const wish = next?.joinedBy === 'run-on' && /^wants?$/.test(frame.chunks.at(-1)!.word) ? next : null;
    const told = wish ? [...frame.chunks, ...wish.chunks] : frame.chunks;
    const said = told.map((c) => c.word).join(' ');
    if (DROPS.test(said)) return [decision(talk, frame, 'drop', frame, dropped(talk, frame, at))];
    const held = heldBack(talk, frame);
    if (held) {
      banned = held.end;
      return [decision(talk, frame, 'hold', held)];
    }
    const someone = isPerson(frame.subject) || isCalled(talk, frame);
    const chosen = CHOICES.test(said) && !frame.negative && (someone || frame.subject.length === 0);
    const wished = WISHES.test(said) && !frame.negative && frame.subject.length > 0 && someone;
    const seems = /^(?:look|seem|sound|feel)$/.test(frame.lemma ?? '');
    if (!(chosen || wished) || seems || frame.predicate === 'imperative') return [];
    return [decision(talk, frame, 'choice', { start: frame.start, end: (wish ?? frame).end })];
  });
}

function decision(talk: Talk, frame: Frame, way: string, { start, end }: Span, drops: string | null = null): Decision {
  const span = { start, end };
  return { ...base(talk, frame, `decision/${way}`, span), kind: 'decision', what: inOwnWords(talk, span), drops };
}

const LEADS = /^(?:(?:so|and|but) )*/;
const HOLDS =
  /^(?:nobody|no one|no-one)(?:(?:'s| is| are)? (?:to|should|can|may|must) | (?!knows|seems|says|was|is|has|uses|minds|cares|likes)[a-z]+s\b)|^no [a-z]+ (?:goes|gets|comes)\b.*\b(?:until|till|before)\b/;

/** "No sander, no heat gun on that door", "no sparks near the tank": work that is not to be. */
const NO_TOOL =
  /^no (?:(?:dry |power |open |foot )?(?:sanders?|sanding|grinders?|grinding|torch(?:es)?|flames?|sparks|heat guns?|saws?|sawing|cutting|drills?|drilling|scrapers?|scraping|welding|smoking|tools?|traffic|hammering|walking|climbing))\b(?:,? (?:and |or )?no [a-z]+(?: [a-z]+)?)*(?: (?:near|on|in|around|by|under|over|till|until|before|up|inside|out)\b.*)?$|^no (?:water|weight|load|heat|power)\b.* (?:till|until|before)\b/;

/** "Nobody scrapes in there until the results are in", "no board goes up till he's through": to the end of its sentence. */
function heldBack({ text }: Talk, { start }: Frame): Span | null {
  const said = /^[^.;!?\n]*/.exec(text.slice(start))![0].trim();
  const told = lowered(said).replace(LEADS, '');
  return HOLDS.test(told) || NO_TOOL.test(told) ? { start, end: start + said.length } : null;
}

/** A name that nothing else is known by: "Linda went with the white". */
const isCalled = ({ text }: Talk, { subject: [first, ...more] }: Frame) =>
  first?.kind === 'word' && !more.length && !first.verb && /^[A-Z][a-z]+$/.test(text.slice(first.start, first.end));

function dropped(talk: Talk, frame: Frame, at: number): string | null {
  const thing = thingIn(frame.chunks);
  const named = thing.length ? thing : meantAt(talk, at);
  return named.length ? phrase(named) : null;
}
