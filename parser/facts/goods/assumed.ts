/** Goods that nobody names, because what they come by or their size says what they are. Common practice, no source. */
import type { Quantity } from '../../types.ts';
import { isGoods, isNounTerm } from '../chunks.ts';
import type { Talk } from '../talk.ts';
import type { Lot } from './lot.ts';
import type { Naming } from './naming.ts';

/** What a lot may be of by its size or by what it comes by, where its own words name nothing. */
export const assumedIn = (talk: Talk, lot: Lot): Naming[] => [
  ...batteryBySize(lot),
  ...tileBySize(lot),
  ...byUnit(talk, lot),
  ...byItsPack(talk, lot),
];

/** "Put a new nine volt in": a battery is called by its voltage. */
function batteryBySize(lot: Lot): Naming[] {
  const volts = lot.sizes.find((q) => q.unitKind === 'voltage' && q.value.equals(9));
  return volts && !lot.own.some(isNounTerm) ? [assumed('battery', lot, volts)] : [];
}

/** "Five boxes of the 12x24": what comes by the box and is told by length and width is tile. */
function tileBySize(lot: Lot): Naming[] {
  const [first, second] = lot.sizes;
  const pair = lot.sizes.length === 2 && first!.group?.kind === 'pair' && second!.group?.id === first!.group.id;
  const pack = lot.pack ?? (lot.upper ?? lot.amount)?.unit ?? '';
  return pair && lot.own.length === 0 && /^(?:box|case|carton)$/.test(pack) ? [assumed('tile', lot, second!)] : [];
}

/** What comes by a unit, what work the note must tell of, if any, and words that tell of something else that comes so. */
const BY_UNIT: readonly { unit: RegExp; name: string; told?: RegExp; others: RegExp }[] = [
  {
    unit: /^(?:square|bundle)$/,
    name: 'shingle',
    others:
      /\b(?:metal|panels?|tiles?|slates?|shakes?|felt|membrane|underlay\w*|siding|corrugated|lath|straps?|sticks?)\b/i,
  },
  {
    unit: /^sheet$/,
    name: 'drywall',
    told: /\b(?:board(?:ed|ing)|hung|mud(?:ded)?|tap(?:ed|ing)|lid|skim(?:med)?)\b/i,
    others:
      /\b(?:ply\w*|osb|mdf|cement|backer|foam|poly\w*|sand\w*|metal|tin|steel|lattice|panels?|hardboard|beadboard)\b/i,
  },
  {
    unit: /^coil$/,
    name: 'coil nail',
    others: /\b(?:pipe|tub\w+|wire|cable|flashing|trim|hose|strap\w*|pex|romex|metal)\b/i,
  },
];

/** "Nineteen square on the front slope", "twenty two sheets with the lid", where nothing that the note names comes so. */
function byUnit(talk: Talk, lot: Lot): Naming[] {
  const counted = lot.upper ?? lot.amount;
  const unit = counted?.unit;
  if (!counted || !unit || lot.own.some(isGoods)) return [];
  if (talk.chunks.some(({ term }) => term?.soldBy?.includes(unit))) return [];
  const goods = BY_UNIT.find(
    (by) => by.unit.test(unit) && (by.told?.test(talk.text) ?? true) && !by.others.test(talk.text),
  );
  return goods ? [assumed(goods.name, lot, counted)] : [];
}

/** "The other two tubes turned up": what arrives is called by what it comes as. */
function byItsPack(talk: Talk, lot: Lot): Naming[] {
  const counted = lot.amount;
  const came = counted && /^ (?:turned up|showed up)\b/i.test(talk.text.slice(counted.end));
  return came && counted.unitKind === 'pack' ? [assumed(counted.unit!, lot, counted)] : [];
}

const assumed = (word: string, { sizes }: Lot, { start, end, from, until }: Quantity): Naming => ({
  chunks: [{ kind: 'word', word, start, end, from, until }],
  sizes,
  own: true,
  end,
  features: ['own', 'own by size'],
});
