/** A flaw that was put right is told as back: the item that it was stands open again. */
import { sameArea, wordsOf } from '../../../parser/trade/likeness.ts';
import { isLive } from '../live.ts';
import type { Meeting } from '../meeting.ts';
import { isLeftToThem } from '../said/theirs.ts';
import { isWork, type Standing } from './board.ts';
import { joinItems } from './commands.ts';
import { ailmentsOf, curesAmong } from './endings/ailments.ts';
import type { Clause } from './endings/clauses.ts';
import { goesBy } from './endings/shared.ts';
import { setState, tell } from './items.ts';

const AGAIN =
  /\b(?:again|back at it|at it again|acting up|same as before|(?:has |have |'s )?(?:started|starting) (?:back )?up|back to \w+ing)\b/;
/** "The drip's back", "that smell came back", "the rattle has returned". */
const BACK =
  /^(?:(?:and|so|but|oh|well|now|right|okay) )*(?:(?:the|that|this|those|my|our|your|her|his) )?([a-z][a-z' -]{1,30}?)(?:(?:'s| is| are| has come| have come| has| have) back| (?:come|came) back|(?: has| have)? (?:returned|started (?:back )?up))(?: again| too| already| now)*$/;
/** "Shuts again", "is back on": well again. */
const WELL =
  /\b(?:works?|working|shuts?|closes?|opens?|locks?|latch(?:es)?|drains?|runs (?:fine|clear|free|good|sweet)|good|fine|quiet|tight|solid|dry|clear|straight|happy|boarded|lit|live|normal|cook|use|on|(?<!start(?:ed|ing) )up|together) again\b|\b(?:not|never|no|don't|doesn't|won't|didn't|without|if|unless|in case|until|till|before|so it|check|look|test)\b/;

/** Noises and sparks by the names that people give them, by the place of their kind among the ailments. */
const NAMED: readonly [RegExp, number][] = [
  [/\b(?:peep|beep|honk|quack|tick|ping|sing|tweet|whin|scream|screech|thump|bong|clack)\w*\b/, 3],
  [/\b(?:fizz|crackl|arc|zap|pop)\w*\b/, 4],
];

/** What ails in a clause: kinds of ailment, less those told only by what would be their cure. */
function ailsIn({ said, tokens }: Clause): ReadonlySet<number> {
  const cures = curesAmong(tokens.map(({ stem }) => stem));
  const kinds = ailmentsOf(said).filter((kind) => {
    const rest = tokens.filter(({ stem }) => !cures[kind]!.includes(stem)).map(({ word }) => word);
    return ailmentsOf(rest.join(' ')).includes(kind);
  });
  return new Set([...kinds, ...NAMED.flatMap(([named, kind]) => (named.test(said) ? [kind] : []))]);
}

/** "No heat", and "cold again": what it lacks, told by its opposite. */
const isOpposite = (flaw: string, said: string): boolean =>
  /\bno (?:heat|hot)\b|\bnot? (?:heating|getting hot)\b/.test(flaw) && /\b(?:cold|freezing|lukewarm)\b/.test(said);

/** Closed flaws that a clause tells as back. */
function backIn(closed: readonly Standing[], clause: Clause): Standing[] {
  const { said, words } = clause;
  const named = BACK.exec(said)?.[1];
  if (named) {
    // "The door's back" is a door that was away.
    const flaw = [...wordsOf(named)].filter((word) => !isWork(word));
    const known = closed.filter((item) => {
      const own = wordsOf(item.problem!);
      return flaw.some((word) => own.has(word) || (item.told.has(word) && !item.words.has(word) && item.head !== word));
    });
    if (known.length) return known;
  }
  if (!AGAIN.test(said) || WELL.test(said)) return [];
  const ails = ailsIn(clause);
  const alike = closed.filter((item) => {
    const flaw = item.problem!.toLowerCase();
    const own = [...wordsOf(item.problem!)].some((word) => words.has(word) && word !== item.head);
    return own || isOpposite(flaw, said) || ailmentsOf(flaw).some((kind) => ails.has(kind));
  });
  const byHead = alike.filter(({ head }) => words.has(head));
  if (byHead.length) return byHead;
  const things = [...words].filter((word) => !isWork(word) && !IDLE.test(word));
  const byThing = alike.filter((item) => things.some((word) => goesBy(item, word)));
  // "It squeaks again": nothing is named, and one alone squeaked.
  return byThing.length || things.length > MOST ? byThing : alike;
}
const IDLE = /^(?:thing|stuff|start|nois|sound|act|time|morn|day)/;
const MOST = 1;
/** So far behind it may be said that it is to stay as it is. */
const BEHIND = 90;

/** Whether a clause may tell of anything as back. */
export const maybeBack = ({ said }: Clause): boolean => AGAIN.test(said) || BACK.test(said);

/**
 * Opens again what a note tells as back, and takes what it opened for it into that.
 *
 * @param back those of its clauses that may tell it
 */
export function reopenToldBack(
  { ledger, entry, text, met }: Meeting,
  back: readonly Clause[],
  areas: readonly string[],
): void {
  const { board } = ledger;
  for (const clause of back) {
    const room = areas.find((area) => clause.said.includes(area.toLowerCase())) ?? null;
    const closed = board.items.filter(
      (item) =>
        item.state === 'done' &&
        item.problem !== null &&
        item.history.every(({ entry: told }) => told !== entry.id) &&
        sameArea(room, item.area),
    );
    const told = backIn(closed, clause);
    if (told.length !== 1) continue;
    const [item] = told as [Standing];
    const quote = text.slice(clause.start, clause.end).trim();
    if (isLeftToThem(text.slice(clause.start, clause.end + BEHIND))) continue;
    const here = met.filter(({ history }) => history.some((h) => h.entry === entry.id && isWithin(h.words, quote)));
    // It was told of an item that stands.
    if (here.some((other) => isLive(other) && other.history[0]!.entry !== entry.id)) continue;
    setState(board, item, entry, 'open', quote);
    tell(board, item, quote);
    for (const fresh of here) if (fresh.problem !== null) joinItems(board, entry, fresh, item, null);
  }
}

const isWithin = (words: string | null, quote: string): boolean =>
  words !== null && (quote.includes(words) || words.includes(quote));
