import type { Problem } from '../types.ts';
import { antecedent } from './antecedent.ts';
import { type Chunk, isDeterminer, isNounTerm } from './chunks.ts';
import type { Frame } from './frames.ts';
import { base } from './make.ts';
import { isPerson, isPointer, nounPhraseFrom, phrase, type Talk, thingIn } from './talk.ts';
import { isNegative } from './words.ts';

/** One flaw found in one clause. */
interface Flaw {
  thing: Chunk[];
  defect: string;
  span: { start: number; end: number };
  rule: string;
  confidence: number;
}

/** Things found wrong, missing, damaged, out of true or not fitting; fixed where the talk goes on to say so. */
export function readProblems(talk: Talk): Problem[] {
  const out: Problem[] = [];
  talk.frames.forEach((frame, at) => {
    for (const flaw of flawsIn(talk, frame, at)) {
      const fixedBy = fixIn(talk, frame, at);
      const said = talk.text.slice(frame.start, frame.end).toLowerCase();
      const end = fixedBy ? Math.max(flaw.span.end, fixedBy.end) : flaw.span.end;
      out.push({
        ...base(talk, frame, flaw.rule, { start: flaw.span.start, end }, flaw.confidence),
        kind: 'problem',
        thing: nameOf(talk, flaw, at) || 'something',
        defect: flaw.defect,
        state: fixedBy ? 'fixed' : 'open',
        suspected: /\b(might|maybe|could be|may be|think|looks like|looks|probably|suspect|not sure|seems?)\b/.test(
          said,
        ),
      });
    }
  });
  return merged(out.filter((p) => p.thing !== 'something'));
}

/** The thing's name: a bare number takes the thing before it, a room that stood alone before it comes first. */
function nameOf(talk: Talk, flaw: Flaw, at: number): string {
  const name = phrase(flaw.thing);
  if (/^\d+$/.test(name)) return `${phrase(antecedent(talk, at))} ${name}`.trim();
  const before = talk.frames[at - 1];
  const room =
    before &&
    before.sentence === talk.frames[at]!.sentence &&
    before.chunks.length <= 2 &&
    before.predicate === 'none' &&
    before.chunks[0]!.term?.kind === 'area'
      ? phrase(before.chunks)
      : '';
  return name && room && !name.includes(room) ? `${room} ${name}` : name;
}

/** The same flaw told twice in a note is one. */
function merged(problems: readonly Problem[]): Problem[] {
  const out: Problem[] = [];
  for (const problem of problems) {
    const twin = out.find(
      (p) =>
        (p.start < problem.end && problem.start < p.end && p.thing === problem.thing) ||
        (p.area === problem.area &&
          p.end + 40 > problem.start &&
          (` ${p.thing} `.includes(` ${problem.thing} `) || ` ${problem.thing} `.includes(` ${p.thing} `))) ||
        (p.thing === problem.thing &&
          p.area === problem.area &&
          (p.defect === problem.defect || p.end + 40 > problem.start)),
    );
    if (!twin) out.push(problem);
    else if (problem.state === 'fixed') twin.state = 'fixed';
  }
  return out;
}

function flawsIn(talk: Talk, frame: Frame, at: number): Flaw[] {
  const { chunks } = frame;
  if (frame.predicate === 'imperative' && !/^(somebody|someone)$/.test(chunks[0]!.word)) return [];
  const said = chunks.map((c) => c.word).join(' ');
  // "My knees are shot": the speaker's own affair.
  if (chunks[0]!.word === 'my') return [];
  if (/\b(if|unless|in case)\b/.test(said.split(' ').slice(0, 3).join(' ')) || frame.openers.includes('if')) return [];
  const whole = { start: frame.start, end: frame.end };
  const outOf =
    /\bout of (level|plumb|square|round|whack|true|line|spec)\b/.exec(said) ??
    (frame.lemma !== 'come' && frame.verbAt >= 0 ? outBy(chunks) : null);
  if (outOf && !frame.negative)
    return [
      { thing: thingOf(talk, frame, at), defect: outOf[0], span: whole, rule: 'problem/out-of-true', confidence: 0.85 },
    ];
  const refused = refusal(talk, frame, at, said);
  if (refused) return [refused];
  const absent = absence(frame);
  if (absent) return [absent];
  const misfit =
    /\b(?:too (?:big|small|long|short|wide|narrow|tall|high|low|tight|loose|thick|thin|hot|cold|wet|deep|shallow|close|far|dark|light|heavy|warm|weak|soft|slow)|(?:not|isn't|ain't|aren't|wasn't) (?:level|plumb|square|flush|straight|even|right|working|centered|centred|grounded|secured?|tight|up to code|to code|sealed|getting|lining up|working|closing|draining|holding|latching|turning|reaching|seating|sitting right|running|firing|painted|straight|equal|caulked|grouted|trimmed|installed|finished|heating|cooling|charging|opening))\b/.exec(
      said,
    );
  if (misfit && !/^not /.test(misfit[0].replace(/^(?:isn't|ain't|aren't|wasn't)/, 'x')))
    return [
      { thing: thingOf(talk, frame, at), defect: misfit[0], span: whole, rule: 'problem/misfit', confidence: 0.8 },
    ];
  if (misfit)
    return [
      { thing: thingOf(talk, frame, at), defect: misfit[0], span: whole, rule: 'problem/misfit', confidence: 0.8 },
    ];
  const short = chunks.findIndex(
    (c, k) =>
      /^(short|shy|low|off|proud|over)$/.test(c.word) &&
      chunks[k - 1]?.quantity &&
      chunks[k - 1]!.quantity!.unitKind === 'length',
  );
  if (
    short >= 0 &&
    (frame.predicate === 'copula' || (chunks[short]!.word === 'short' && chunks.slice(0, short - 1).some(isNounTerm)))
  )
    return [
      {
        thing: thingOf(talk, frame, at),
        defect: phrase(chunks.slice(short - 1, short + 1)),
        span: whole,
        rule: 'problem/short',
        confidence: 0.75,
      },
    ];
  const wrong = chunks.findIndex((c) => c.word === 'wrong');
  if (wrong >= 0 && !isNegativeBefore(chunks, wrong) && !/nothing wrong/.test(said)) {
    const noun = chunks.slice(wrong + 1, nounPhraseFrom(chunks, wrong + 1));
    const subject = thingOf(talk, frame, at);
    return [
      {
        thing:
          subject.length && !isPerson(frame.subject) && frame.subject.length ? subject : noun.length ? noun : subject,
        defect: phrase(chunks.slice(wrong, wrong + 1 + noun.length)),
        span: whole,
        rule: 'problem/wrong',
        confidence: 0.75,
      },
    ];
  }
  return defects(talk, frame, at);
}

/** "Out almost half an inch": but "out of three eighths lags" has run short of them. */
function outBy(chunks: readonly Chunk[]): [string] | null {
  const k = chunks.findIndex(
    (c, i) =>
      c.word === 'out' &&
      chunks[i + 1]?.word !== 'of' &&
      chunks.slice(i + 1, i + 3).some((n) => n.quantity?.unitKind === 'length'),
  );
  return k < 0 ? null : [phrase(chunks.slice(k, k + 3))];
}

const REFUSES =
  /\b(?:won't|wont|wouldn't|will not|can't|cannot|cant|couldn't|doesn't|doesnt|does not|don't|dont|didn't|did not|not|never|no)\b (?:even |ever |really |quite |want to )?(close|latch|lock|open|drain|reset|hold|fit|line up|turn|shut|sit|seat|work|start|stay|stick|match|reach|light|flush|fire|budge|move|come|spin|slide|catch|read|clear|meet|swing|cool|heat|kick on|stop|set|cure|adhere|bond|pass|test|charge|connect|ring|respond|power)\b/;

/** "The door won't latch", "holes don't line up": the thing refuses. A person's "don't" is an order. */
function refusal(talk: Talk, frame: Frame, at: number, said: string): Flaw | null {
  const match = REFUSES.exec(said);
  if (!match || (/^no\b/.test(match[0]) && frame.chunks.some((c) => c.time))) return null;
  if (/^(?:i|we|you|he|she|they|nobody|somebody)\b/.test(said) && isPerson(frame.subject)) return null;
  if (
    /^(?:not|no|never)\b/.test(match[0]) &&
    frame.predicate !== 'none' &&
    frame.predicate !== 'copula' &&
    frame.predicate !== 'present'
  )
    return null;
  if (/\b(budge|leak|drip)\b/.test(match[1]!)) return null;
  if (frame.predicate === 'imperative') return null;
  const thing = thingOf(talk, frame, at);
  if (!thing.length) return null;
  const from = said.slice(match.index).split(' ').slice(0, 5).join(' ');
  return {
    thing,
    defect: from,
    span: { start: frame.start, end: frame.end },
    rule: 'problem/refuses',
    confidence: 0.8,
  };
}

/** "No power at the outlet", "there's no blocking", "missing a screw": but "no leaks" is good news. */
function absence(frame: Frame): Flaw | null {
  const { chunks } = frame;
  const k = chunks.findIndex((c, i) => c.word === 'no' && chunks[i + 1] !== undefined);
  const missing = chunks.findIndex((c) => /^(missing|lacking|lacks)$/.test(c.word));
  if (missing >= 0 && !isNegativeBefore(chunks, missing)) {
    const after = chunks.slice(missing + 1, nounPhraseFrom(chunks, missing + 1));
    const hasSubject = chunks.slice(0, missing).some(isNounTerm);
    return {
      thing: hasSubject ? subjectWords(chunks.slice(0, missing)) : after,
      defect: after.length && hasSubject ? `missing ${phrase(after)}` : 'missing',
      span: { start: frame.start, end: frame.end },
      rule: 'problem/missing',
      confidence: 0.8,
    };
  }
  if (k < 0 || frame.predicate === 'imperative' || chunks.some((c) => c.time && !c.time.past)) return null;
  const what = chunks[k + 1]!;
  const noun = chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1));
  if (
    what.term?.kind === 'defect' ||
    /^(problem|problems|issue|issues|complaints?|need|more|mold|mould|drop|damage|bubbles|sign|movement|touch|rush|worries|big|good|idea|luck|cracks|one|charge|cost|change|changes|structural|thanks)$/.test(
      what.word,
    ) ||
    noun.some((c) => /^(needed|required|problem|issues?)$/.test(c.word)) ||
    chunks.some((c) => c.word === 'needed')
  )
    return null;
  if (
    !noun.some(isNounTerm) &&
    !/^(power|water|heat|gas|blocking|ground|vent|flow|pressure|insulation|flashing|backing|clearance|access|signal|hot|cold|light|seal|slope|air)$/.test(
      what.word,
    )
  )
    return null;
  const given =
    frame.predicate === 'copula' || frame.use === 'have' || frame.predicate === 'none' || frame.lemma === 'get';
  if (!given || (isPerson(frame.subject) && noun.some((c) => c.term?.kind === 'material'))) return null;
  const place = chunks.slice(k + 1 + noun.length);
  const subject = thingIn(frame.subject);
  return {
    thing: subject.length && !isPerson(frame.subject) ? subject : [...thingIn(place), ...noun],
    defect: `no ${phrase(noun)}`,
    span: { start: frame.start, end: frame.end },
    rule: 'problem/absent',
    confidence: 0.75,
  };
}

/** A defect word of the vocabulary, said of a thing. */
function defects(talk: Talk, frame: Frame, at: number): Flaw[] {
  const { chunks } = frame;
  const k = chunks.findIndex(
    (c, i) =>
      (c.term?.kind === 'defect' || isFlawNoun(chunks, i)) && !isNegativeBefore(chunks, i) && !isDeedNoun(chunks, i),
  );
  if (k < 0) return [];
  if (frame.predicate === 'owed' || (frame.predicate === 'modal' && !frame.negative && k > frame.verbAt)) return [];
  const defect = chunks[k]!;
  const next = chunks[k + 1];
  const span = { start: frame.start, end: frame.end };
  const conf = 0.8;
  // "I cracked one", "we scratched the door" is still a problem; "he left runs on the sills" too.
  const place = placeAfter(chunks, k);
  if (
    next &&
    isNounTerm(next) &&
    !(
      frame.verbAt >= 0 &&
      k > frame.verbAt &&
      frame.predicate === 'copula' &&
      chunks.slice(0, frame.verbAt + 1).some(isNounTerm)
    )
  ) {
    const noun = chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1));
    return [{ thing: [...noun, ...place], defect: defect.word, span, rule: 'problem/defect-before', confidence: conf }];
  }
  if (frame.verbAt === k && isPerson(frame.subject)) {
    const object = thingIn(frame.rest);
    if (object.length) return [{ thing: object, defect: defect.word, span, rule: 'problem/did', confidence: conf }];
  }
  const subject =
    frame.verbAt >= 0 && frame.verbAt < k && frame.subject.some(isNounTerm) ? frame.subject : chunks.slice(0, k);
  const before = subjectWords(subject);
  if (
    before.some((c) => isNounTerm(c) || (c.kind === 'word' && !c.verb && /^[a-z]{4,}/.test(c.word))) &&
    !isPointer(before) &&
    !isPerson(frame.subject)
  )
    return [
      {
        thing: before,
        defect: phrase(chunks.slice(k, Math.min(k + 3, chunks.length))),
        span,
        rule: 'problem/defect-after',
        confidence: conf,
      },
    ];
  if (place.length && !(frame.predicate === 'copula' && /^(?:it's|its|they're|it|they)$/.test(chunks[0]!.word)))
    return [{ thing: [...place, defect], defect: defect.word, span, rule: 'problem/defect-in', confidence: conf }];
  const named = thingOf(talk, frame, at);
  if (!named.length && !before.length) return [];
  return [
    {
      thing: before.length && !isPointer(before) && !isPerson(frame.subject) ? before : named,
      defect: phrase(chunks.slice(k, k + 2)),
      span,
      rule: 'problem/defect',
      confidence: 0.7,
    },
  ];
}

/** "That stain on the ceiling", "has a hole in the wall": a mark or an opening where none should be. */
function isFlawNoun(chunks: readonly Chunk[], k: number): boolean {
  if (!/^(?:stains?|holes?|spots?|marks?|dents?|humps?|bumps?|bulges?|rocks?)$/.test(chunks[k]!.word)) return false;
  const before = chunks
    .slice(Math.max(0, k - 3), k)
    .map((c) => c.word)
    .join(' ');
  return (
    /^(?:in|on|behind|by|under|at)$/.test(chunks[k + 1]?.word ?? '') &&
    /\b(?:that|a|some|big|has|have|got|there's|is|is big)\b/.test(before)
  );
}

/** "Crack in the step", "runs on two window sills". */
function placeAfter(chunks: readonly Chunk[], k: number): Chunk[] {
  const prep = chunks.findIndex(
    (c, i) => i > k && i <= k + 4 && /^(in|on|at|under|behind|around|along|by|of|near|to|between)$/.test(c.word),
  );
  if (prep < 0) return [];
  let end = nounPhraseFrom(chunks, skipDeterminer(chunks, prep + 1));
  // "On the back of the paneling": a side is named by what it is the side of.
  if (chunks[end]?.word === 'of') end = nounPhraseFrom(chunks, skipDeterminer(chunks, end + 1));
  return chunks.slice(prep + 1, end).filter((c) => !isDeterminer(c) && !c.quantity);
}

const skipDeterminer = (chunks: readonly Chunk[], i: number) => (isDeterminer(chunks[i]) ? i + 1 : i);

function subjectWords(chunks: readonly Chunk[]): Chunk[] {
  return chunks.filter(
    (c) =>
      !c.quantity &&
      c.kind !== 'mark' &&
      !isNegative(c.word) &&
      !/^(is|are|was|were|has|have|had|been|looks|a|the|there's|got|gets|it's|they|their|i|we|that|there|some|where|still|only|just|now|one|of|also|some)$/.test(
        c.word,
      ),
  );
}

function isNegativeBefore(chunks: readonly Chunk[], k: number): boolean {
  for (let i = Math.max(0, k - 4); i < k; i++) {
    const c = chunks[i]!;
    if (isNegative(c.word) || c.word === 'any') return true;
  }
  return false;
}

/** "Leak test", "crack filler", "short list": the word is part of a name or a deed. */
const isDeedNoun = (chunks: readonly Chunk[], k: number) =>
  /^(weekend|test|tests|tested|filler|isolation|repair|detector|kit)$/.test(chunks[k + 1]?.word ?? '');

function thingOf(talk: Talk, frame: Frame, at: number): Chunk[] {
  // "Nail pops: 3 in hall ceiling": the place follows the colon.
  if (frame.chunks.length === 1 && talk.text[frame.end] === ':') {
    const place = thingIn(talk.frames[at + 1]?.chunks ?? []);
    if (place.length) return place;
  }
  const subject = frame.subject.filter((c) => !c.quantity || c.quantity.unit === null);
  if (subject.length && !isPointer(subject) && !isPerson(subject)) return subject;
  if (frame.predicate === 'none') {
    const nouns = thingIn(frame.chunks);
    if (nouns.length) return nouns;
  }
  const object = thingIn(frame.rest);
  if (isPerson(frame.subject) && object.length) return object;
  const back = antecedent(talk, at);
  return back.length ? back : object;
}

const GOOD_NOW =
  /\b(?:all set|good to go|took care of (?:it|that)|taken care of|handled|sorted|that's fixed|fixed (?:it|that)|problem solved|solved|no more|back on|it does now|no leaks?|no drips?)\b|\b(?:good|ok|okay|fine|dry|tight|level|solid|flat|flush|straight|plumb|square|quiet|clear|working|works|closes|latches|drains|holding|holds) (?:enough )?(?:now|again)\b|\bnow (?:it's|its) \w+|\bit's (?:good|fine|dry|tight|working|making)\b|^(?:ok|okay|works|runs|good|fine|solid|dry|all good|holding|now)(?: now| ok)?$|\bthat one's fine|\bis ok now\b|\b\d+ ?v now\b/;
const REPAIRS =
  /^(fix|repair|replace|swap|patch|tape|shim|straighten|adjust|tighten|torque|cut|redo|plane|reset|resecure|refasten|reattach|rework|re-?cut|reseal|caulk|solder|clear|unclog|sand|change|splice|reroute|plug|seal|glue|trim|level|rehang|butter|reground|reconnect|clean|snake|pull)$/;

/** The clause, this one or one of the next three, that says that it was put right. */
function fixIn(talk: Talk, frame: Frame, at: number): { end: number } | null {
  for (let k = at; k < Math.min(talk.frames.length, at + 5); k++) {
    const later = talk.frames[k]!;
    // The next line of a list is another matter.
    if (talk.text.slice(frame.end, later.start).includes('\n')) return null;
    const said = later.chunks.map((c) => c.word).join(' ');
    if (k > at && later.joinedBy === 'stop' && k > at + 1 && later.sentence > frame.sentence + 1) return null;
    if (GOOD_NOW.test(said) && (!later.negative || /\bno (?:more )?(?:leaks?|drips?)\b/.test(said)))
      return { end: later.end };
    if (k > at && later.predicate === 'owed' && /\bhad to\b/.test(said)) continue;
    if (k === at) continue;
    if (
      (later.predicate === 'past' || later.predicate === 'present') &&
      (REPAIRS.test(later.lemma ?? '') ||
        (later.use === 'work' &&
          later.predicate === 'past' &&
          !/^(?:install|hang|run|lay|pour)$/.test(later.lemma ?? '')) ||
        (later.predicate === 'past' && /\bnew\b/.test(said))) &&
      !later.negative &&
      (isPerson(later.subject) || later.subject.length === 0)
    ) {
      const object = later.rest;
      const named = thingIn(object);
      const first = phrase(named).split(' ').at(-1);
      const same =
        first !== undefined && first !== '' && talk.text.slice(frame.start, frame.end).toLowerCase().includes(first);
      if (!named.length || object.some((c) => /^(it|them|that|those|'em|em)$/.test(c.word)) || same) {
        return /\bstill\b/.test(talk.frames[k + 1]?.chunks.map((c) => c.word).join(' ') ?? '')
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
