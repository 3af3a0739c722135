import { type Chunk, isCopula, isDeterminer, isNounTerm, isPreposition } from './chunks.ts';

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
  // "Balance shot": a thing and its flaw.
  if (next?.term?.kind === 'defect' && at + 2 >= chunks.length) return false;
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
export function isTerseOrder(chunks: readonly Chunk[], at: number): boolean {
  const [verb, next] = [chunks[at]!, chunks[at + 1]];
  if (!TERSE.has(verb.word) || !verb.verb?.forms.has('base') || verb.owner || !next) return false;
  // "Paint n wall": a word or two may stand before what it is done to.
  const noun = chunks.findIndex((c, k) => k > at && k <= at + 3 && isNounTerm(c));
  if (
    noun < 0 ||
    !chunks
      .slice(at + 1, noun)
      .every((c) => c.kind === 'word' && !c.verb && /^[a-z]+$/.test(c.word) && !isPreposition(c))
  )
    return false;
  const rest = chunks.slice(noun + 1);
  if (
    rest.length === 0 &&
    verb.term?.kind === 'material' &&
    !/^(?:surface|area|fixture)$/.test(chunks[noun]!.term!.kind)
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
