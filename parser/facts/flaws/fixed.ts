import { isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, phrase, type Talk, thingIn } from '../talk.ts';

const GOOD_NOW =
  /\b(?:all set|good to go|took care of (?:it|that)|taken care of|handled|sorted|that's fixed|fixed (?:it|that)|problem solved|solved|no more|back on|it does now|no leaks?|no drips?|new \w+ (?:in|on|installed)$|it (?:quit|stopped)|(?:quit|stopped) (?:leaking|dripping|running))\b|\b(?:good|ok|okay|fine|dry|tight|level|solid|flat|flush|straight|plumb|square|quiet|clear|working|works|closes|latches|drains|holding|holds) (?:enough )?(?:now|again)\b|\bnow (?:it's|its) \w+|\bnow is (?:good|ok|okay|fine|dry)\b|\bit's (?:good|fine|dry|tight|working|making|holding)\b|^(?:ok|okay|works|runs|good|fine|solid|dry|all good|holding|now)(?: now| ok)?$|\bthat one's fine|\bis ok now\b|\b\d+ ?v now\b/;
const REPAIRS =
  /^(fix|repair|replace|swap|patch|tape|shim|straighten|adjust|tighten|torque|cut|redo|plane|reset|resecure|refasten|reattach|rework|re-?cut|reseal|caulk|solder|clear|unclog|sand|change|splice|reroute|plug|seal|glue|trim|level|rehang|butter|reground|reconnect|clean|snake|pull)$/;

const MENDS =
  /^(?:fix|repair|patch|seal|plug|fill|caulk|clear|correct|resolve|address|replace|swap|change|stop|straighten|tighten)$/;

const TORN =
  /^(?:pulled|torn|tore|ripped|popped|knocked|yanked) (?:(?:right|clean|plumb|half|all the way|nearly) )?(?:out|off|away|loose|apart)\b/;

/** Looked at, noted or made safe, but not put right. */
const NO_REPAIR =
  /^(?:install|hang|run|lay|pour|step|look|check|test|meter|mark|tag|note|photograph|flag|report|try|find|tell|call|cover|tarp|bag|leave|open|scope|probe|draw|start|push|bring|move|finish|stop|show|expose|demo|put)$/;

/** The clause, this one or one of the next three, that says that it was put right. */
export function fixIn(talk: Talk, frame: Frame, at: number, isFlaw: (at: number) => boolean): { end: number } | null {
  for (let k = at; k < Math.min(talk.frames.length, at + 5); k++) {
    const later = talk.frames[k]!;
    // The next line of a list is another matter.
    if (talk.text.slice(frame.end, later.start).includes('\n')) return null;
    const said = later.chunks.map((c) => c.word).join(' ');
    if (k > at && later.joinedBy === 'stop' && k > at + 1 && later.sentence > frame.sentence + 1) return null;
    // What will be done has not been done; another thing wrong has a repair of its own.
    if (k > at && (later.chunks.some((c) => c.time && !c.time.past) || (isFlaw(k) && isOther(later, frame))))
      return null;
    if (GOOD_NOW.test(said) && (!later.negative || /\bno (?:more )?(?:leaks?|drips?)\b/.test(said)))
      return { end: later.end };
    if (k > at && later.predicate === 'owed' && /\bhad to\b/.test(said)) continue;
    // "An old splice, just taped": how somebody had left it.
    if (/^(?:just|only) \S+$/.test(said) && later.chunks[1]?.verb?.forms.has('participle')) continue;
    // "Loose, pulled right out of the wall": how it came to be so.
    if (TORN.test(said)) continue;
    // "Fixed the squeak in the hall": told by its repair.
    if (
      k === at &&
      frame.predicate === 'past' &&
      MENDS.test(frame.lemma ?? '') &&
      (isPerson(frame.subject) || !frame.subject.length)
    )
      return { end: frame.end };
    if (k === at) continue;
    if (
      (later.predicate === 'past' || later.predicate === 'present') &&
      (REPAIRS.test(later.lemma ?? '') ||
        (later.use === 'work' && later.predicate === 'past' && !NO_REPAIR.test(later.lemma ?? '')) ||
        (later.predicate === 'past' && /\bnew\b/.test(said)) ||
        /\b(?:it|them|that)\b.* already\b/.test(said)) &&
      !later.negative &&
      (isPerson(later.subject) || later.subject.length === 0)
    ) {
      const object = later.rest;
      const named = thingIn(object);
      const first = phrase(named).split(' ').at(-1);
      const same =
        first !== undefined && first !== '' && talk.text.slice(frame.start, frame.end).toLowerCase().includes(first);
      // "... so I shimmed the last two boxes": what was done because of it.
      const because =
        k === at + 1 &&
        later.predicate === 'past' &&
        later.use !== 'buy' &&
        (later.openers.includes('so') ||
          // "Window won't lock, adjusted the keeper".
          (later.sentence === frame.sentence && REPAIRS.test(later.lemma ?? '')));
      const renewed =
        /\bnew\b/.test(said) &&
        later.use !== 'buy' &&
        k === at + 1 &&
        later.sentence === frame.sentence &&
        later.predicate === 'past';
      if (
        because ||
        renewed ||
        !named.length ||
        object.some((c) => /^(it|them|that|those|'em|em)$/.test(c.word)) ||
        same
      ) {
        return /\b(?:still|again)\b/.test(talk.frames[k + 1]?.chunks.map((c) => c.word).join(' ') ?? '')
          ? null
          : { end: later.end };
      }
    }
    // A new thing wrong or a new order ends the reach of the first.
    if (later.predicate === 'imperative' || later.predicate === 'owed') return null;
    if (later.subject.some(isNounTerm) && !isPerson(later.subject) && k > at + 1) return null;
  }
  return null;
}

/** Another thing, named: "tub stopper missing, both doors off track, I put the doors back". */
const isOther = (later: Frame, first: Frame) =>
  later.predicate !== 'past' &&
  later.chunks.some(
    (c) => isNounTerm(c) && c.term!.kind !== 'role' && !first.chunks.some((f) => f.term?.name === c.term!.name),
  );
