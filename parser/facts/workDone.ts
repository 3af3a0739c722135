import { type Chunk, isDeterminer, isGoods, isNounTerm, isPreposition } from './chunks.ts';
import type { Frame } from './frames.ts';
import { meantAt } from './naming/meant.ts';
import { isPerson, isPointer, phrase, type Talk, thingIn } from './talk.ts';
import { IN_PLACE } from './words.ts';
import { isWorkOn } from './workNotHarm.ts';

/** "On the west side", "in the two front rooms": where it went, but both rooms are two entries of the list. */
const whereIn = (chunks: readonly Chunk[]) =>
  chunks.some((c) => /^(?:both|all|every)$/.test(c.word))
    ? ''
    : phrase(chunks.filter((c) => c.quantity?.unitKind !== 'length'));

/** "Blown to fifteen inches", "cut at 24", "sealed first coat": how far, where or which time. */
const goesWith = (c: Chunk | undefined) =>
  isPreposition(c) || c?.kind === 'quantity' || c?.kind === 'number' || c?.kind === 'time';

const STORED =
  /\b(?:bag|bags|box|boxes|truck|van|garage|shed|basement|trailer|car|shop|dumpster|driveway|yard|stock|way|backorder|order|hold|storage|bucket|pile|middle)\b/;

/** What is switched on, not put in. */
const SUPPLIES = /^(?:gas|water|power|heat|lights?|breaker|ac|fans?|heaters?|dehus?|dehumidifiers?)(?:'s)?$/;
const ADJECTIVE_TOO =
  /^(?:dry|level|open|clear|clean|close|empty|square|secure|smooth|plumb|tight|loose|set|cut|rough|wet|set|run)$/;

const NOT_WORK = new Set(
  'be have get say tell think figure reckon guess mention swear claim want need know like love hope go come leave arrive meet buy order purchase use take see look notice find show happen try work run sit read measure give cost pay spend owe forget lose miss remember bump spill crack scratch deliver backorder account ship schedule plan step meter lean mark center locate space begin stop start keep stay wait turn hold feel seem charge ask'.split(
    ' ',
  ),
);

/** The work that a clause tells of as finished, verb first: `hang door`; null where it tells of none. */
export function doneTask(talk: Talk, frame: Frame, at: number): string | null {
  const { chunks, predicate, lemma } = frame;
  const said = chunks.map((c) => c.word).join(' ');
  if (
    frame.negative ||
    /\b(?:almost|half|nearly|partly|not|still|unless|gonna|will|should|before|until|till)\b/.test(said) ||
    /^(?:\S+ ){0,3}if\b/.test(said) ||
    /\?$/.test(talk.text.slice(frame.start, frame.end + 1))
  )
    return null;
  if (predicate === 'past') {
    if (
      (chunks[frame.verbAt]?.term?.kind === 'defect' && !isWorkOn(chunks, frame.verbAt)) ||
      (lemma === 'send' && /^they/.test(chunks[0]!.word))
    )
      return null;
    // "I put eighty pounds on it" loads it to test it.
    if (frame.rest[0]?.quantity && /^(?:weight|pressure)$/.test(frame.rest[0].quantity.unitKind ?? '')) return null;
    // "Ran out of underlayment"
    if (
      lemma === 'run' &&
      /^(?:out|low|short)$/.test(frame.rest[0]?.word ?? '') &&
      /^(?:of|on)$/.test(frame.rest[1]?.word ?? '')
    )
      return null;
    if (lemma === 'run' && frame.rest.some(isGoods)) return object(talk, frame, at, 'run');
    if (lemma === 'take' && /^(?:down|out|off|apart|up)$/.test(frame.rest[0]?.word ?? ''))
      return object(talk, frame, at, 'take');
    if (lemma === 'get') return gotIn(talk, frame, at);
    if (lemma === 'finish' || lemma === 'complete' || lemma === 'wrap') return object(talk, frame, at, 'finish');
    if (lemma === 'check' || lemma === 'test' || lemma === 'verify' || lemma === 'clean')
      return object(talk, frame, at, lemma);
    if (!lemma || NOT_WORK.has(lemma) || frame.use === 'say' || frame.use === 'buy' || frame.use === 'return')
      return null;
    if (
      frame.use !== 'work' &&
      !/^(put|throw|drop|bring|move|haul|send)$/.test(lemma) &&
      !isWorkOn(chunks, frame.verbAt)
    )
      return null;
    if (frame.subject.length && !isPerson(frame.subject)) {
      // "Walls got tiled", "fence line staked": the thing is the object.
      const told = frame.rest[0];
      const more = isPreposition(told) || told?.kind === 'number' || told?.kind === 'quantity' || told?.kind === 'time';
      if (!more && frame.rest.some((c) => isNounTerm(c) && c.term!.kind !== 'area')) return null;
      return `${lemma} ${phrase(frame.subject)}`;
    }
    return object(talk, frame, at, lemma);
  }
  // "We finish to tape all": a first language whose past is like its present.
  const after = frame.rest[0]?.word === 'to' ? frame.rest[1]?.verb : undefined;
  if (predicate === 'present' && lemma === 'finish' && after && isPerson(frame.subject))
    return object(talk, { ...frame, rest: frame.rest.slice(2) }, at, after.lemma);
  // "All the drawer fronts have one coat".
  const coats = frame.rest.findIndex((c) => /^coats?$/.test(c.word) || /coats?$/.test(c.quantity?.quote ?? ''));
  if (predicate === 'present' && lemma === 'have' && coats >= 0 && coats <= 2 && frame.subject.some(isNounTerm))
    return `coat ${phrase(frame.subject)}`;
  const counted = predicate === 'none' ? countedIn(talk, frame, at) : null;
  if (counted) return counted;
  if (predicate === 'copula' || predicate === 'none') {
    const tail = predicate === 'copula' ? frame.rest : chunks;
    const subject = predicate === 'copula' ? frame.subject : [];
    const participle = tail.find(
      (c) =>
        c.verb &&
        // "Patio is pour already": a first language without participles leaves the base form.
        (c.verb.forms.has('participle') ||
          c.verb.forms.has('past') ||
          (predicate === 'copula' && c === tail[0] && !ADJECTIVE_TOO.test(c.word))) &&
        (!c.verb.forms.has('base') ||
          predicate === 'copula' ||
          (c === tail.at(-1) && tail.length > 1 && /^(?:set|cut|put|hung|run|shut)$/.test(c.word))) &&
        (c.verb.use === 'work' || isWorkOn(chunks, chunks.indexOf(c))) &&
        (c.term?.kind !== 'defect' || isWorkOn(chunks, chunks.indexOf(c))) &&
        !(isNounTerm(c) && predicate === 'none'),
    );
    const last = tail
      .filter(
        (c) =>
          c.kind !== 'time' &&
          c.kind !== 'mark' &&
          !/^(now|too|already|today|finally|all|around|way|the|good|and|both|sides)$/.test(c.word),
      )
      .at(-1);
    const inPlace = tail.find((c) => IN_PLACE.has(c.word) && !/^(good|through|over|out|off)$/.test(c.word));
    const done = tail.find((c) => /^(done|finished|finish|complete|completed|laid|hung|handled)$/.test(c.word));
    const inPlaceFirst = predicate === 'copula' && tail[0] === inPlace && inPlace !== undefined;
    if (predicate === 'copula') {
      if (!subject.length || isPerson(subject)) {
        if (isPerson(subject) && done)
          return object(talk, { ...frame, rest: tail.slice(tail.indexOf(done) + 1) }, at, 'finish');
        return null;
      }
      const thing = isPointer(subject) ? phrase(meantAt(talk, at)) : phrase(subject);
      if (!thing || (isPointer(subject) && (done || inPlace))) return null;
      const standing = tail[0]?.word === 'in' && subject.some(isGoods) && !tail.some((c) => c.term?.kind === 'defect');
      if (standing && tail[1]?.word === 'at') return `install ${thing}`;
      const sized = tail.some((c) => c.quantity && !/^(?:count|pack)$/.test(c.quantity.unitKind ?? 'count'));
      if ((tail.some((c) => c.term?.kind === 'defect') || sized) && !done && !participle && !inPlaceFirst) return null;
      // "Is running" works; "is charged and running" was charged.
      const doing = tail.findIndex((c) => c.verb?.forms.has('ing') && !isNounTerm(c));
      if (doing >= 0 && !inPlaceFirst && !(participle && tail.indexOf(participle) < doing)) return null;
      // "In a bag on the sill", "in the garage": where they lie.
      if (
        inPlaceFirst &&
        STORED.test(
          tail
            .slice(1, 4)
            .map((c) => c.word)
            .join(' '),
        )
      )
        return null;
      // "The bath's out": taken out; but a light that is out is dead.
      if (
        tail[0]?.word === 'out' &&
        tail.length <= 2 &&
        subject.some((c) => isGoods(c) || c.term?.kind === 'surface' || c.term?.kind === 'area') &&
        !/lights?|bulb|lamp|pilot/.test(thing)
      )
        return `take out ${thing}`;
      if (/\b(?:has|have|needs?|gotta|got) (?:to|be)\b|\bneeds\b/.test(said)) return null;
      if (SUPPLIES.test(subject.at(-1)!.word) && subject.length <= 2 && !done && !participle) return null;
      // "The valve was closed": how it was found.
      if (participle && /^(?:close|open|empty)$/.test(participle.verb!.lemma)) return null;
      if (participle) return `${participle.verb!.lemma} ${thing}`;
      if (done) return `finish ${thing}`;
      if (
        inPlace &&
        (last === inPlace || tail.indexOf(inPlace) <= 1) &&
        (subject.some(isNounTerm) || tail.at(-1) === inPlace) &&
        !/^(at|by|from)$/.test(tail[tail.indexOf(inPlace) + 1]?.word ?? '') &&
        !(tail[tail.indexOf(inPlace) + 1]?.word === 'to' && tail[tail.indexOf(inPlace) + 2]?.quantity)
      )
        return sized && tail[tail.indexOf(inPlace) + 1]?.quantity?.unitKind === 'length'
          ? null
          : `install ${thing} ${whereIn(tail.slice(tail.indexOf(inPlace) + 1))}`.trim();
      return null;
    }
    if (done && chunks.indexOf(done) > 0) return `finish ${phrase(chunks.filter((c) => c !== done))}`;
    if (chunks.some((c) => c.time && !c.time.past && c.time.hours === undefined)) return null;
    const measured = chunks.some(
      (c) => c.quantity && c.quantity.unit !== null && !/^(?:count|pack)$/.test(c.quantity.unitKind ?? ''),
    );
    if (SUPPLIES.test(chunks[0]!.word) || (measured && !participle)) return null;
    const coat = /\b(?:first|second|third|1st|2nd|3rd|final|finish|skim|last|prime|base|top) coats?\b/.test(said);
    if (
      last &&
      IN_PLACE.has(last.word) &&
      chunks.indexOf(last) > 0 &&
      chunks.some(isNounTerm) &&
      !/^(over|through|off|good|set|out)$/.test(last.word)
    )
      return `install ${phrase(chunks.filter((c) => c !== last && !c.quantity))}`;
    if (coat && chunks.some((c) => c.word === 'on')) return `apply ${phrase(chunks)}`;
    if (
      participle &&
      chunks.indexOf(participle) > 0 &&
      chunks
        .slice(0, chunks.indexOf(participle))
        .some((c) => isNounTerm(c) || (c.kind === 'word' && /^[a-z]{4,}$/.test(c.word))) &&
      (participle === last || goesWith(chunks[chunks.indexOf(participle) + 1]))
    )
      return `${participle.verb!.lemma} ${phrase(chunks.filter((c) => c !== participle))}`;
  }
  return null;
}

/** One part of a row, by where it is. */
const SIDE = /^(?:north|south|east|west|left|right|front|back|top|bottom|upper|lower|first|second|third|side|end)s?$/;

/** Behind a count of what is up: how many are not. */
const TO_GO = /^(?:[a-z]+|\d+)(?: more)? (?:to go|left|to do|left to (?:do|go)|still to (?:go|do|come))\b/;

/** "22 boards down, 6 to go", "fourteen sheets up, ten left": counted work, told with what is left of it. */
function countedIn(talk: Talk, frame: Frame, at: number): string | null {
  const [count, thing, place, ...more] = frame.chunks;
  const next = talk.frames[at + 1];
  if (!count?.quantity || !next || next.sentence !== frame.sentence) return null;
  if (!TO_GO.test(next.chunks.map((c) => c.word).join(' '))) return null;
  // The pack is the thing itself: "fourteen sheets".
  const packed = count.quantity.unitKind === 'pack';
  const [name, where] = packed ? [count, thing] : [thing, place];
  if (!name || !where || !/^(?:up|down|in|on|set|hung|done|laid)$/.test(where.word)) return null;
  const words = packed ? count.word.split(' ').at(-1)! : phrase([name]);
  return packed || (/s$/.test(name.word) && !more.some((c) => c.quantity)) ? `install ${words}` : null;
}

function gotIn(talk: Talk, frame: Frame, at: number): string | null {
  const { rest } = frame;
  const part = rest.findIndex(
    (c, k) =>
      k > 0 &&
      ((c.verb?.forms.has('participle') && c.verb.use === 'work' && !isNounTerm(c)) ||
        (IN_PLACE.has(c.word) && (rest[k + 1] === undefined || rest[k + 1]!.kind === 'time'))),
  );
  if (part < 1) return null;
  const thing = rest.slice(0, part);
  // "Walls | I got the north and east done": which of them, behind their name.
  const last = talk.frames[at - 1];
  const row = frame.subject.filter((c) => isNounTerm(c));
  const sides = thing.every((c) => SIDE.test(c.word) || isDeterminer(c) || /^(?:and|&|,)$/.test(c.word));
  if (sides && (row.length || last?.predicate === 'none'))
    return `finish ${phrase(thing)} ${phrase(row.length ? row : last!.chunks)}`;
  if (!thing.some((c) => isNounTerm(c) || c.kind === 'quantity')) return null;
  const verb = rest[part]!.verb?.lemma ?? (/^(done|finished|complete)$/.test(rest[part]!.word) ? 'finish' : 'install');
  const named = phrase(isPointer(thing) ? meantAt(talk, at) : thing);
  return named ? `${verb} ${named}` : null;
}

/** Verb first, then what it was done to; "it" is looked up. */
function object(talk: Talk, frame: Frame, at: number, verb: string): string | null {
  const rest = frame.rest.filter((c) => c.kind !== 'time');
  const words = phrase(rest);
  const points =
    rest.length === 0 ||
    !rest.some((c) => isNounTerm(c) || (c.kind === 'word' && !isPreposition(c))) ||
    (rest.some((c) => /^(it|them|that|those|'em|em|one|this)$/.test(c.word)) &&
      !rest.some((c) => isNounTerm(c) && c.term!.kind !== 'area'));
  if (!points) return words ? `${verb} ${words}` : null;
  const thing = phrase(meantAt(talk, at));
  const named = thingIn(rest).length ? words : [thing, words].filter(Boolean).join(' ');
  return named ? `${verb} ${named}` : null;
}
