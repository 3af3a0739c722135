import type { Quantity } from '../../types.ts';
import { type Chunk, isCopula, isGoods, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, nounPhraseFrom } from '../talk.ts';
import { isNegative } from '../words.ts';

const MEASURABLE = new Set([
  'length',
  'area',
  'temperature',
  'percent',
  'pressure',
  'voltage',
  'current',
  'power',
  'angle',
  'slope',
  'torque',
  'speed',
  'flow',
  'weight',
  'other',
]);
/** Units in which goods are sold, hardly ever a reading. */
const NEVER_MEASURED = /^(?:yd|ton|gal|qt|pt|kg|L|ml|oz|cu yd|penny|grit)$/;
export const DIMENSIONS =
  /^(wide|width|tall|high|height|long|length|deep|depth|thick|thickness|across|diameter|apart|square|clear|gap|reveal|showing|exposure|short|shy|over|proud|low|off|centers?|centres?)$/;
/** Nouns that are themselves a size or a reading: the figure beside one is what it came to. */
const SIZE_NOUN =
  /^(?:temp|temps|temperature|moisture|humidity|rh|flow|pressure|voltage|static|reading|superheat|subcool|subcooling|delta|rise|run|fall|drop|slope|pitch|depth|width|height|length|overhang|reveal|gap|spread|spacing|clearance|headroom|setback|offset|exposure|diameter|radius|thickness|level|opening|rough opening|ro|span|return|leg|spec|print|plan|code|drawing|tag|plate|head|slump|vacuum|leakage|seat|sill|centers|centres)$/;
const READS =
  /^(read|sit|be|come|hit|measure|stand|stick|show|run|want|need|average|draw|hold|spec|say|start|end|go|pull|get|put|set|bow|crown|drop|dip|fall|rise|sag|lean|rack|belly|cup|hump|stick|make|call|cut|land|center|centre|mount)$/;
const LEADS =
  /^(at|to|reads?|reading|about|around|under|over|says?|wants?|needs?|said|min|minimum|max|now|by|in|of|was|is|still|every|only|hit|measured|out)$/;

/** Whether a figure is a reading or a size that somebody took or must hold to. Weighs the signs for and against. */
export function isMeasurement(frame: Frame, k: number, q: Quantity): boolean {
  const next = frame.chunks[k + 1];
  if (q.unitKind && MEASURABLE.has(q.unitKind) && q.unitFrom !== 'none') {
    if (NEVER_MEASURED.test(q.unit ?? '') || q.per !== undefined || /footers?$/.test(q.quote)) return false;
    if (q.unitKind === 'percent' && /^(?:waste|extra|over)$/.test(next?.word ?? '')) return false;
    // A size in front of goods that nobody counted ("the half inch drywall") is the goods' own.
    return !(isSizeOfGoods(frame.chunks, k) && !DIMENSIONS.test(next?.word ?? ''));
  }
  if (q.unit !== null && q.unit !== undefined) return false;
  return weigh(frame, k, q) >= 2;
}

/** The signs that a figure without a unit is a reading; 2 and more tell that it is. */
function weigh(frame: Frame, k: number, q: Quantity): number {
  const { chunks } = frame;
  const next = chunks[k + 1];
  const before = chunks[k - 1];
  const lead = before?.word ?? '';
  if (q.group?.kind === 'eachOf') return 0;
  if (next?.word === 'of' && !isFine(q)) return 0;
  if (next && /^(?:more|left|times?|coats?|guys|people|each|ones?|short|total|in)$/.test(next.word) && !isFine(q))
    return 0;
  if (next && (isNounTerm(next) || isThing(next)) && !DIMENSIONS.test(next.word)) {
    const crownOf = isFine(q) && !isGoods(next) && /^(?:a|an)$/.test(lead);
    if (!crownOf && !(q.group?.kind === 'pair' && !isSizeOfGoods(chunks, k))) return 0;
  }
  // "The fee was one fifty": money.
  if (frame.subject.some((c) => /^(?:fee|cost|price|bill|total|charge|rent|deposit)$/.test(c.word))) return 0;
  let weight = 0;
  if (q.group?.kind === 'pair' && q.group.size >= 2) weight += isSizeOfGoods(chunks, k) ? 0 : 2;
  if (isFine(q)) weight += 1;
  if (DIMENSIONS.test(next?.word ?? '') && !/^(?:short|over|off|low)$/.test(next!.word)) weight += 2;
  if (SIZE_NOUN.test(lead) || SIZE_NOUN.test(lastNoun(chunks, k)) || SIZE_NOUN.test(lead.replace(/'s$/, '')))
    weight += 2;
  if (LEADS.test(lead) || isCopula(before)) weight += 1;
  if (before?.owner && !/^(?:one|he|she|it|that)$/.test(before.owner)) weight += 2;
  const reads = frame.verbAt >= 0 && frame.verbAt < k && READS.test(frame.lemma ?? 'be');
  const said = frame.subject.filter((c) => c.kind !== 'mark');
  if (reads && said.length > 0 && !isPerson(said)) weight += 1;
  if (reads && /^(?:at|to|reads?)$/.test(lead)) weight += 1;
  if (frame.predicate === 'none' && k === chunks.length - 1 && chunks.some(isNounTerm) && isFine(q)) weight += 1;
  if (frame.predicate === 'none' && lead === 'at') weight += 1;
  if (lead === 'every') weight += 1;
  if (/^(?:reads?|reading|measured)$/.test(lead)) weight += 1;
  // "The hole needs thirty": an opening is not counted in pieces.
  if (/^(?:needs?|wants?)$/.test(lead) && said.at(-1)?.term?.kind === 'surface') weight += 2;
  // Counting: "I need three", "used 8"; "there's 6"; "if it's still over 16".
  if (isPerson(said) && !/^(?:at|to|reads?)$/.test(lead) && !isFine(q)) weight -= 2;
  if (/^(?:needs?|used?|got|have|get|grab|falta|there's|theres)$/.test(lead) && !isFine(q))
    weight -= said.length ? 1 : 2;
  if (chunks.slice(0, 2).some((c) => c.word === 'if') || frame.openers.includes('if')) weight -= 3;
  if (isNegative(lead)) weight -= 3;
  if (said.length === 1 && /^(?:there's|theres|there)$/.test(said[0]!.word)) weight -= 2;
  return weight;
}

/** Eighths, sixteenths and finer are read off a tape, nothing is counted in them; so are figures with a decimal point. */
const isFine = (q: Quantity) =>
  q.value.d >= 8n || (q.value.d > 1n && q.value.n > q.value.d && q.value.d !== 2n) || q.quote.includes('.');

/** A word that can be what was counted: "4 rotors", "1 jb". */
const isThing = (c: Chunk) =>
  c.kind === 'word' &&
  /^[a-z]{2,}$/.test(c.word) &&
  !c.verb &&
  !/^(?:and|or|but|so|to|at|in|on|off|from|by|for|with|now|even|end|all|overall|over|under|up|down|out|max|min|minimum|maximum|too|both|plus|minus|then|when|which|like|across|instead|not|is|was|hot|cold|dead|flat|even|exactly|give)$/.test(
    c.word,
  );

/** The last noun before a place, as a size may hang on it ("headroom under the beam is only 78"). */
function lastNoun(chunks: readonly Chunk[], k: number): string {
  const own = chunks.slice(0, k).find((c) => SIZE_NOUN.test(c.word.replace(/'s$/, '')));
  return own ? own.word.replace(/'s$/, '') : '';
}

/** A figure in front of goods is their size: `1/2 drywall`; not in front of a gap, hole or joint. */
function isSizeOfGoods(chunks: readonly Chunk[], k: number): boolean {
  const end = nounPhraseFrom(chunks, k + 1);
  const head = chunks.slice(k + 1, end).findLast((c) => isNounTerm(c) || c.kind === 'word');
  return (
    head !== undefined &&
    (isGoods(head) || head.term?.kind === 'tool') &&
    !/^(gap|hole|crack|opening|joint|reveal|leg|legs|bead|piece|section)$/.test(head.word)
  );
}
