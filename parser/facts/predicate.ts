import { type Chunk, isCopula, isDeterminer, isModal, isNounTerm, isPreposition, isSubjectPronoun } from './chunks.ts';
import { HAVES, isNegative } from './words.ts';

/** How a clause says its thing. */
export type Predicate =
  /** "Call the plumber", "grout it tomorrow". */
  | 'imperative'
  /** "Pulled the flashing", "I ran a bead". */
  | 'past'
  /** "The flange is cracked", "walls are tiled". */
  | 'copula'
  /** "Has to come down", "needs two more", "gotta swap it": something still owed. */
  | 'owed'
  /** "Will", "won't", "can't", "I'll". */
  | 'modal'
  /** "It leaks", "sits at sixteen". */
  | 'present'
  /** No verb: a list entry, a label, "nail pops x5". */
  | 'none';

const OWED_WORDS = new Set(['gotta', 'wanna', 'needs', 'need', 'must', 'hasta', 'wants', 'falta']);
const PAST_SUBJECTLESS = new Set(['past', 'participle']);

/** What a clause says, and where. */
interface Said {
  predicate: Predicate;
  verbAt: number;
  subjectEnd: number;
  lemma: string | null;
  use: string | null;
}

const none: Said = { predicate: 'none', verbAt: -1, subjectEnd: 0, lemma: null, use: null };

function said(predicate: Predicate, chunks: readonly Chunk[], at: number, subjectEnd: number): Said {
  const verb = chunks[at]?.verb;
  return { predicate, verbAt: at, subjectEnd, lemma: verb?.lemma ?? null, use: verb?.use ?? null };
}

/** Finds the verb that says the clause. */
export function predicateOf(chunks: readonly Chunk[]): Said {
  let i = 0;
  while (
    chunks[i]?.kind === 'time' ||
    chunks[i]?.kind === 'mark' ||
    (chunks[i]?.kind === 'word' && chunks[i]!.word === 'please')
  )
    i++;
  const head = chunks[i];
  if (!head) return none;
  if (isImperativeAt(chunks, i)) return said('imperative', chunks, i, i);
  if (isTerseOrder(chunks, i)) return said('imperative', chunks, i, i);
  if (head.word === 'got' && isOwed(chunks, i)) return verbAfter('owed', chunks, i, i);
  if (
    head.verb &&
    [...head.verb.forms].some((f) => PAST_SUBJECTLESS.has(f)) &&
    !head.verb.forms.has('base') &&
    !isNounTerm(chunks[i + 1]?.kind === 'word' ? undefined : head)
  ) {
    // "Used 3 rolls", "pulled the flashing"; but "cracked fitting under the sink" is a noun with its flaw.
    const next = chunks[i + 1];
    const isNoun = next !== undefined && isNounTerm(next) && head.verb.use === 'other';
    if (!isNoun) return said('past', chunks, i, i);
  }
  for (let at = i; at < chunks.length; at++) {
    const chunk = chunks[at]!;
    const next = chunks[at + 1];
    if (chunk.owner && isPredicative(chunks, at + 1)) {
      if (
        next &&
        (next.word === 'gonna' || next.word === 'gotta' || (next.word === 'got' && chunks[at + 2]?.word === 'to'))
      )
        return verbAfter('owed', chunks, at + 1, at + 1);
      return said('copula', chunks, at, at + 1);
    }
    if (at === i && chunk.word === 'let') continue;
    if (isOwed(chunks, at)) return verbAfter('owed', chunks, at, at);
    if (isSubjectPronoun(chunk) && /'s$|^(its|thats|theres)$/.test(chunk.word) && !isModal(next)) {
      if (
        next?.verb &&
        (next.verb.forms.has('past') || next.verb.forms.has('participle')) &&
        chunk.word !== "that's" &&
        chunk.word !== "it's"
      )
        return said('past', chunks, at + 1, at + 1);
      if (next && isOwed(chunks, at + 1)) return verbAfter('owed', chunks, at + 1, at + 1);
      return said('copula', chunks, at, at + 1);
    }
    if (/^(i|we|he|she|they|you)('m|'re)$/.test(chunk.word)) {
      if (next?.word === 'gonna') return verbAfter('modal', chunks, at + 1, at + 1);
      if (next?.verb?.forms.has('ing')) return said('present', chunks, at + 1, at + 1);
      return said('copula', chunks, at, at + 1);
    }
    if (/^(i|we|he|she|they|you)('ve|ve)$/.test(chunk.word)) {
      if (next && (next.word === 'gotta' || (next.word === 'got' && chunks[at + 2]?.word === 'to')))
        return verbAfter('owed', chunks, at + 1, at + 1);
      const verbAt = chunks.findIndex((c, k) => k > at && k <= at + 3 && c.verb);
      return verbAt > 0 ? said('past', chunks, verbAt, at + 1) : said('present', chunks, at, at + 1);
    }
    if (/^(i|we|he|she|they|you)'(ll|d)$/.test(chunk.word)) return verbAfter('modal', chunks, at, at + 1);
    if ((isCopula(chunk) || chunk.word === 'get') && at > i) {
      if (/^(got|gets?|getting)$/.test(chunk.word)) {
        if (chunk.word === 'got' && next?.word === 'to') return verbAfter('owed', chunks, at, at);
        if (next?.verb?.forms.has('participle') && chunk.word !== 'got') return said('owed', chunks, at + 1, at);
        return said('past', chunks, at, at);
      }
      // "Sealer crew comes monday to seal it" moves; "came in at five" and "come broken" say how a thing is.
      if (/^(?:come|comes)$/.test(chunk.word) && (next?.time || /^(?:to|by|back|over|in|out)$/.test(next?.word ?? '')))
        return said('present', chunks, at, at);
      return { ...said('copula', chunks, at, at), lemma: 'be', use: 'other' };
    }
    if (isCopula(chunk) && at === i && !chunk.verb?.forms.has('past')) return said('copula', chunks, at, at);
    if (isModal(chunk)) return verbAfter('modal', chunks, at, at);
    if (HAVES.has(chunk.word)) {
      const perfect = next?.verb?.forms.has('participle') && !isNounTerm(next);
      return perfect
        ? said('past', chunks, at + 1, at)
        : { ...said('present', chunks, at, at), lemma: 'have', use: 'have' };
    }
    if (chunk.verb && at > i && saysIt(chunks, at)) {
      const forms = chunk.verb.forms;
      return said(forms.has('past') ? 'past' : 'present', chunks, at, at);
    }
    if (chunk.word === 'got' && at === i) return said('past', chunks, at, at);
  }
  return none;
}

/** A verb in subject-verb position: after a pronoun, or a past or -s form after a noun. */
function saysIt(chunks: readonly Chunk[], at: number): boolean {
  const chunk = chunks[at]!;
  const before = chunks[at - 1]!;
  const forms = chunk.verb!.forms;
  if (isPreposition(before) || isDeterminer(before) || before.word === 'to') return false;
  if (
    isSubjectPronoun(before) ||
    (/^(?:already|just|also|only|finally|really|never|then|actually|went|still)$/.test(before.word) &&
      isSubjectPronoun(chunks[at - 2]))
  )
    return true;
  if (forms.has('past') && !forms.has('base') && chunk.kind !== 'term') return true;
  if (forms.has('past') && !forms.has('base')) return !isNounTerm(chunks[at + 1]) || before.kind !== 'word';
  if (forms.has('s') && !isNounTerm(chunk)) return isNounTerm(before) || before.kind === 'word';
  return false;
}

/** "is", said as "'s" on a noun, must be followed by what the noun is. */
export function isPredicative(chunks: readonly Chunk[], at: number): boolean {
  const chunk = chunks[at];
  if (!chunk) return false;
  if (chunk.kind === 'quantity') return !isNounTerm(chunks[at + 1]);
  if (chunk.kind === 'time') return true;
  if (chunk.kind === 'term')
    return (
      chunk.term!.kind === 'defect' ||
      (chunk.term!.kind === 'task' && Boolean(chunk.verb && !chunk.verb.forms.has('base')))
    );
  if (isPreposition(chunk) || isDeterminer(chunk) || isNegative(chunk.word)) return true;
  if (chunk.verb && !chunk.verb.forms.has('base')) return true;
  if (/[a-z]{3}ing$/.test(chunk.word) && chunk.kind === 'word') return true;
  return /^(gonna|gotta|all|too|about|almost|still|just|now|only|already|got|been|good|fine|ok|okay|bad|tight|loose|short|long|high|low|dry|wet|hot|cold|dead|done|ready|set|cut|so|real|pretty|way|kind|like|where|what|probably|mostly|finally|back|running|a)$/.test(
    chunk.word,
  );
}

function isOwed(chunks: readonly Chunk[], at: number): boolean {
  const chunk = chunks[at]!;
  const next = chunks[at + 1];
  if (chunk.kind === 'mark') return false;
  if (/^(has|have|had|having|got|i've|we've|gots)$/.test(chunk.word) && next?.word === 'to') return true;
  if (chunk.word === 'supposed' && next?.word === 'to') return true;
  return OWED_WORDS.has(chunk.word) && !(chunk.word === 'wants' && at === 0 ? false : chunk.kind === 'quantity');
}

/** The verb that an owed or modal word governs: "has to be cut", "needs replacing", "gotta come down". */
function verbAfter(predicate: Predicate, chunks: readonly Chunk[], at: number, subjectEnd: number): Said {
  for (let k = at + 1; k < chunks.length && k <= at + 7; k++) {
    const chunk = chunks[k]!;
    if (chunk.kind === 'quantity' || (isDeterminer(chunk) && chunk.word !== 'all')) break;
    if (chunk.verb && !/^(to|have|has)$/.test(chunk.word) && !(chunk.verb.lemma === 'be') && chunk.word !== 'get')
      return said(predicate, chunks, k, subjectEnd);
    if (chunk.word === 'get') {
      const next = chunks[k + 1];
      return next?.verb?.forms.has('participle') && !isNounTerm(next)
        ? said(predicate, chunks, k + 1, subjectEnd)
        : said(predicate, chunks, k, subjectEnd);
    }
    if (isNounTerm(chunk)) break;
  }
  const own = chunks[at]!.verb;
  return { predicate, verbAt: at, subjectEnd, lemma: own?.lemma ?? chunks[at]!.word, use: own?.use ?? null };
}

/** A base-form verb that tells somebody to do something: no subject, and something for it to act on. */
export function isImperativeAt(chunks: readonly Chunk[], at: number): boolean {
  const chunk = chunks[at];
  if (!chunk) return false;
  const next = chunks[at + 1];
  if (/^(don't|dont|do)$/.test(chunk.word) && next?.verb?.forms.has('base')) return true;
  if (chunk.word === 'let' || chunk.word === "let's") return true;
  if (
    !chunk.verb?.forms.has('base') ||
    chunk.owner ||
    chunk.term?.kind === 'defect' ||
    /^(?:of|than|and|or)$/.test(next?.word ?? '')
  )
    return false;
  if (chunk.word === 'need' || chunk.word === 'want' || chunk.word === 'have' || chunk.word === 'got')
    return chunk.word === 'have' && isHaveDo(chunks, at);
  // "Trench box is in", "head hung", "supply temp 54": a name, and what is said of it.
  const saidOf =
    next &&
    !isDeterminer(next) &&
    (isNounTerm(next) || next.kind === 'word') &&
    chunks
      .slice(at + 1, at + 5)
      .some((c) => isCopula(c) || (c.kind === 'word' && c.verb?.forms.has('past') && !c.verb.forms.has('base')));
  if (saidOf && !/^(?:call|check|ask|tell|make|see|find|text|remind)$/.test(chunk.word)) return false;
  const ambiguous = isNounTerm(chunk) || NOUNS_TOO.has(chunk.word) || ADJECTIVES_TOO.has(chunk.word);
  if (!next) return !ambiguous;
  if (isCopula(next) && next.word !== 'got') return false;
  if (isDeterminer(next) && next.word !== 'no') return true;
  if (/^(it|them|em|'em|me|him|her|us|him|that|those|one|up|back|out|off|down|again|everything|all)$/.test(next.word))
    return !(ambiguous && /^(up|out|back|off|down)$/.test(next.word)) || next.word === 'it';
  if (ambiguous) return false;
  if (chunk.verb.forms.has('past'))
    return next.kind === 'term' || next.kind === 'quantity' ? PAST_LIKE_BASE.has(chunk.word) === false : false;
  return (
    next.kind === 'quantity' ||
    next.kind === 'term' ||
    next.kind === 'time' ||
    next.kind === 'number' ||
    isPreposition(next) ||
    next.kind === 'word' ||
    next.kind === 'mark'
  );
}

const TERSE = new Set(
  'pull drop hang patch plane sand prime caulk grout seal paint stain tape mud wire shim trim cut lock level run fill clean mount frame tile'.split(
    ' ',
  ),
);

/** "Pull batts back", "paint trim": typed orders whose verb is also a noun. "Tile saw broken" and a bare "paint tray" are none. */
function isTerseOrder(chunks: readonly Chunk[], at: number): boolean {
  const [verb, next] = [chunks[at]!, chunks[at + 1]];
  if (!TERSE.has(verb.word) || !verb.verb?.forms.has('base') || verb.owner || !next || !isNounTerm(next)) return false;
  const rest = chunks.slice(at + 2);
  if (
    rest.length === 0 &&
    verb.term?.kind === 'material' &&
    next.term!.kind !== 'surface' &&
    next.term!.kind !== 'area'
  )
    return false;
  return !rest.some(
    (c) =>
      isCopula(c) ||
      c.term?.kind === 'defect' ||
      (c.verb?.forms.has('past') && !c.verb.forms.has('base')) ||
      /^(?:is|done|on|in|left|needed)$/.test(c.word),
  );
}

/** Verbs whose past is like their base; "cut the board" may be either, "put in 2" is read as done. */
const PAST_LIKE_BASE = new Set(['put', 'set', 'cut', 'hit', 'fit', 'read', 'cost', 'quit', 'shut', 'split', 'spread']);
/** Base forms that are more often nouns on site, so that they need an object to be orders. */
const NOUNS_TOO = new Set(
  'run cut drop need paint stain tape seal trim drain frame nail screw shim mud hole plug cap plate form pin pitch pipe tap box level line lock file fan block bolt brace tile stone rod seat stub saw sand coat strap stop support vent wire work charge mix lag felt clip leak crack drip plan pass mark pack mount oil head supply return trench notch dust jet joint butt cope ease hinge lap screen sheath side sod slurry tent top truss dish bead rough rub match core free wet loose tight bag bar batch bucket short'.split(
    ' ',
  ),
);

/** Base forms that say how a thing is as often as what to do with it. */
const ADJECTIVES_TOO = new Set(
  'dry level open clear clean close empty square secure smooth plumb compact reset roll set complete'.split(' '),
);

/** "Have the plumber drop the tee", "get him to look at it". */
export function isHaveDo(chunks: readonly Chunk[], at: number): boolean {
  if (chunks[at]?.word !== 'have' && chunks[at]?.word !== 'get') return false;
  if (chunks[at + 1]?.word === 'to') return false;
  for (let k = at + 1; k <= at + 5 && k < chunks.length; k++) {
    const chunk = chunks[k]!;
    if (chunk.kind === 'quantity') return false;
    const person =
      chunks[k - 1]?.term?.kind === 'role' || /^(?:him|her|them|somebody|someone)$/.test(chunks[k - 1]?.word ?? '');
    if (k > at + 1 && chunk.verb?.forms.has('base') && (person || !isNounTerm(chunk))) return true;
  }
  return false;
}
