import Fraction from 'fraction.js';
import { tokenise } from '../../parser/hearing/tokens.ts';
import { readQuantities } from '../../parser/quantities/index.ts';
import { convert } from '../../parser/quantities/units.ts';
import { builtIn } from '../../parser/trade/index.ts';
import { mentionsIn } from '../../parser/trade/mentions.ts';
import type { Quantity } from '../../parser/types.ts';
import { remembered } from './reading/remembered.ts';
import type { ComputedLine, NoteFacts, SiteFacts } from './types.ts';

/** What notes have told so far of one area's surface to be covered. */
interface Surface {
  area: string | null;
  length: Fraction;
  width: Fraction;
  noteIds: string[];
  goods: { item: string; size: string | null } | null;
  waste: Fraction | null;
  pack: { unit: string; holds: Fraction } | null;
}

const COVERS =
  /^(?:vinyl plank|laminate|hardwood|tile|subway tile|porcelain tile|ceramic tile|mosaic|carpet|underlayment|plywood|backer board|drywall)$/;
const FT = 'ft';

/**
 * Boards, planks and tiles by area: length x width, waste, packs. Reckoned only where a note names the goods and how
 * they are packed; a size said again for the same area replaces the earlier one. Waste 10 % where none was said
 * (common practice, no source).
 */
export function floorLines(
  notes: readonly NoteFacts[],
  site: SiteFacts,
): { lines: ComputedLine[]; questions: { noteId: string; ask: string }[] } {
  const surfaces: Surface[] = [];
  const questions: { noteId: string; ask: string }[] = [];
  for (const note of notes) {
    const { size, waste, pack, goods } = toldOf(note.text);
    const area =
      note.facts.find((f) => f.area)?.area ?? site.areas.find((a) => note.text.toLowerCase().includes(a)) ?? null;
    if (size && unsure(note.text)) {
      questions.push({ noteId: note.noteId, ask: `Which length is right for the ${area ?? 'floor'}? Two were said.` });
      continue;
    }
    const known = surfaces.find((s) => s.area === area);
    if (size && (known || pack)) {
      const surface = known ?? {
        area,
        length: size[0],
        width: size[1],
        noteIds: [],
        goods: null,
        waste: null,
        pack: null,
      };
      surface.length = size[0];
      surface.width = size[1];
      surface.noteIds.push(note.noteId);
      if (!known) surfaces.push(surface);
    }
    const target = surfaces.find((s) => s.area === area);
    if (!target || (!size && !known)) continue;
    target.goods = goods ?? target.goods;
    target.waste = waste ?? target.waste;
    target.pack = pack ?? target.pack;
  }
  return { lines: surfaces.flatMap(lineOf), questions };
}

function lineOf(s: Surface): ComputedLine[] {
  if (!s.goods || !s.pack) return [];
  const area = s.length.mul(s.width);
  const waste = s.waste ?? new Fraction(10, 100);
  const amount = area.mul(waste.add(1));
  const round = (f: Fraction) => String(Math.round(f.valueOf() * 100) / 100);
  const packs = amount.div(s.pack.holds);
  return [
    {
      item: s.goods.item,
      size: s.goods.size,
      specs: [],
      area: s.area,
      amount,
      unit: 'sq ft',
      pack: s.pack,
      stockUsed: false,
      working: `${feet(s.length)} x ${feet(s.width)} = ${round(area)} sq ft, + ${round(waste.mul(100))} % = ${round(amount)}, ${round(s.pack.holds)} sq ft a ${s.pack.unit}: ${round(packs)}, so ${packs.ceil().toFraction()}`,
      assumptions: s.waste ? [] : ['10 % waste, common practice'],
      source: 'arithmetic; waste as said or common practice',
      noteIds: s.noteIds,
    },
  ];
}

function feet(f: Fraction): string {
  const whole = f.floor();
  const inches = f.sub(whole).mul(12);
  return inches.equals(0) ? `${whole.toFraction()} ft` : `${whole.toFraction()} ft ${inches.toFraction(true)} in`;
}

/** The note's length by width, in feet; a bare second figure shares the first one's unit. */
function rectangle(quantities: readonly Quantity[]): [Fraction, Fraction] | null {
  const first = quantities.find((q) => q.group?.kind === 'pair' && q.group.index === 0 && q.group.size === 2);
  const second = first && quantities.find((q) => q.group?.id === first.group!.id && q.group!.index === 1);
  if (!first || !second) return null;
  if (first.unit !== FT && second.unit !== FT) return null;
  const inFeet = (q: Quantity) => (q.unit ? convert(q.value, q.unit, FT) : q.value);
  const [a, b] = [inFeet(first), inFeet(second)];
  return a && b ? [a, b] : null;
}

const unsure = (text: string) =>
  /\b(?:couldn't hear|not sure if|or was it|might be|forget which|don't remember)\b/.test(text.toLowerCase());

const wasteOf = (quantities: readonly Quantity[]) =>
  quantities.find((q) => q.unit === '%' && q.value.valueOf() <= 30)?.value.div(100) ?? null;

function packOf(quantities: readonly Quantity[]): Surface['pack'] {
  const holds = quantities.find((q) => q.unit === 'sq ft' && q.per !== undefined && q.value.valueOf() > 0);
  return holds ? { unit: holds.per!, holds: holds.value } : null;
}

/** What one note tells of a floor, whichever floor that is. */
const toldOf = remembered((text) => {
  const { quantities } = readQuantities(tokenise(text), text);
  return { size: rectangle(quantities), waste: wasteOf(quantities), pack: packOf(quantities), goods: goodsIn(text) };
});

function goodsIn(text: string): Surface['goods'] {
  const found = mentionsIn(tokenise(text), text, builtIn()).findLast((m) => COVERS.test(m.term.name));
  return found ? { item: found.term.name, size: null } : null;
}
