import { unitNamed } from '../../../parser/quantities/units.ts';
import type { Figure } from './said.ts';

/** Words for what goods come in, as a pattern. */
export const PACKS =
  'box|boxes|case|cases|carton|cartons|bag|bags|bundle|bundles|roll|rolls|sheet|sheets|can|cans|tin|tins|bucket|buckets|pail|pails|gallon|gallons|gal|quart|quarts|qt|litre|litres|liter|liters|tube|tubes|cartridge|cartridges|sausage|sausages|pallet|pallets|square|pack|packs|pkg|stick|sticks|stock|section|sections|length|lengths|piece|pieces|pc|pcs|each|drum|kit|kits|bale|bales|sack|sacks|coil|coils|spool|spools|board|boards|bottle|bottles|jug|jugs|tub|tubs|slab|slabs|panel|panels|plank|planks|brick|block|tile|tiles|footers';

/** The canonical unit of a pack word, singular: `boards` and `footers` are sticks. */
export function packUnit(word: string): string {
  const named = unitNamed(word);
  if (named) return named.unit === 'length' ? 'stick' : named.unit;
  const single = word.replace(/(?<=x)es$/, '').replace(/s$/, '');
  if (/^(?:board|footer|plank|section|stock)$/.test(single)) return 'stick';
  if (/^(?:tile|brick|block|panel|slab)$/.test(single)) return 'each';
  return single;
}

/** Feet of sticks named by their length in the plural. */
export const STICK_FEET: Readonly<Record<string, number>> = {
  eights: 8,
  tens: 10,
  twelves: 12,
  fourteens: 14,
  sixteens: 16,
  twenties: 20,
};

/** How sure a bare or habit-filled unit is: only a unit that was said counts. */
export const unitOf = (figure: Figure) => (figure.sure ? figure.unit : null);
