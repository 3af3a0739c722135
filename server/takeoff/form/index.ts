import Fraction from 'fraction.js';
import { BAG_YIELD, holeVolume } from '../calculators/concrete.ts';
import { cover } from '../calculators/cover.ts';
import { groutPerFoot } from '../calculators/grout.ts';
import { battsOf, baysOf } from '../calculators/insulation.ts';
import { mortarCoverage } from '../calculators/mortar.ts';
import { absurdLength, type Refusal, refuse, show, toBuy } from '../calculators/reckoned.ts';
import { feetPerTube } from '../calculators/sealant.ts';
import { atSpacing, type Counted, gapsUnder, sideBySide } from '../calculators/spacing.ts';
import { cutList } from '../cutlist/cutList.ts';
import { lengthOf, WrongMeasure } from './measure.ts';

/** A length as typed. */
type Length = string;
/** A floor or wall by its sides, feet where bare. */
interface Extent {
  length: Length;
  width: Length;
  /** Per cent. */
  waste?: number | undefined;
}

/**
 * What a form may ask to be reckoned, without a note. Bare lengths: places in feet, goods and gaps in inches. `holds` is
 * the square feet that one `unit` covers.
 */
export type Form =
  | (Extent & {
      kind: 'cover';
      unit: string;
      holds: number;
      coats?: number | undefined;
      tile?: [Length, Length] | undefined;
    })
  | (Extent & {
      kind: 'mortar';
      notch: [Length, Length];
      bagPounds?: number | undefined;
      backButtered?: boolean | undefined;
    })
  | (Extent & { kind: 'grout'; tile: [Length, Length]; thickness: Length; joint: Length; bagPounds: number })
  | { kind: 'sealant'; run: Length; bead: [Length, Length]; ounces?: number | undefined; waste?: number | undefined }
  | { kind: 'spacing'; run: Length; spacing: Length; ends?: boolean | undefined }
  | { kind: 'boards'; run: Length; width: Length; gap: Length }
  | { kind: 'balusters'; clear: Length; width: Length; gap?: Length | undefined }
  | { kind: 'holes'; holes: number; diameter: Length; depth: Length; bagPounds: 40 | 50 | 60 | 80 }
  | { kind: 'batts'; wall: Length; spacing: Length; height: Length; batt: Length }
  | { kind: 'cutList'; pieces: { length: Length; count: number }[]; stock: Length[]; kerf?: Length | undefined };

export interface FormAnswer {
  ok: true;
  /** Whole purchase units. */
  buy: { quantity: number; unit: string }[];
  working: string;
  assumptions: string[];
  source: string;
}

const ARITHMETIC = 'arithmetic from what was given';

/** Answers a form with its working, or says in words why it cannot. Never a number from absurd input. */
export function reckonForm(form: Form): FormAnswer | Refusal {
  try {
    return answer(form);
  } catch (error) {
    if (error instanceof WrongMeasure) return error.refusal;
    throw error;
  }
}

function answer(form: Form): FormAnswer | Refusal {
  switch (form.kind) {
    case 'cover':
      return covered(form, form.coats ?? 1, { unit: form.unit, holds: new Fraction(form.holds) });
    case 'mortar':
      return mortar(form);
    case 'grout':
      return grout(form);
    case 'sealant':
      return sealant(form);
    case 'spacing':
      return counted(
        atSpacing(inches(form.run, 'the run', 'ft'), inches(form.spacing, 'the spacing'), form.ends ?? true),
      );
    case 'boards':
      return counted(
        sideBySide(inches(form.run, 'the run', 'ft'), inches(form.width, 'a board'), inches(form.gap, 'the gap')),
      );
    case 'balusters':
      return counted(
        gapsUnder(
          inches(form.clear, 'the opening', 'ft'),
          inches(form.width, 'a baluster'),
          inches(form.gap ?? '4', 'the gap'),
        ),
        form.gap ? ARITHMETIC : 'IRC R312.1.3, no gap over 4 in; local code decides',
      );
    case 'holes':
      return holes(form);
    case 'batts':
      return batts(form);
    case 'cutList':
      return cuts(form);
  }
}

/** Inches; a bare place is typed in feet. */
const inches = (text: Length, what: string, bare: 'ft' | 'in' = 'in'): Fraction =>
  bare === 'ft' ? lengthOf(text, 'ft', what).mul(12) : lengthOf(text, 'in', what);

const counted = (found: Counted | Refusal, source = ARITHMETIC): FormAnswer | Refusal =>
  found.ok
    ? { ok: true, buy: [{ quantity: found.count, unit: 'each' }], working: found.working, assumptions: [], source }
    : found;

function covered(
  form: Extent & { tile?: [Length, Length] | undefined },
  coats: number,
  pack: { unit: string; holds: Fraction },
  assumptions: string[] = [],
  source = ARITHMETIC,
): FormAnswer | Refusal {
  const [length, width] = [lengthOf(form.length, 'ft', 'the length'), lengthOf(form.width, 'ft', 'the width')];
  const silly = absurdLength(length, 'a length') ?? absurdLength(width, 'a width');
  if (silly) return silly;
  if (!Number.isInteger(coats) || coats < 1 || coats > 6) return refuse(`${coats} coats: is that right?`);
  const tile = form.tile?.map((side) => lengthOf(side, 'in', 'the tile'));
  const room = (length.compare(width) >= 0 ? length : width).mul(12);
  if (tile?.some((side) => side.compare(0) <= 0)) return refuse('a tile must be larger than 0');
  if (tile?.some((side) => side.compare(room) > 0)) return refuse('the tile is larger than the place: is that right?');
  const found = cover({
    extent: length.mul(width).mul(coats),
    unit: 'sq ft',
    waste: new Fraction(form.waste ?? 0).div(100),
    pack,
    extentWorking: `${show(length)} ft x ${show(width)} ft${coats > 1 ? ` x ${coats} coats` : ''} = ${show(length.mul(width).mul(coats))} sq ft`,
    assumptions: [...assumptions, ...(form.waste === undefined ? ['no waste added: none was given'] : [])],
    source,
  });
  if (!found.ok) return found;
  return {
    ok: true,
    buy: [{ quantity: toBuy(found), unit: pack.unit }],
    working: found.working,
    assumptions: found.assumptions,
    source: found.source,
  };
}

function mortar(form: Extract<Form, { kind: 'mortar' }>): FormAnswer | Refusal {
  const notch = form.notch.map((side) => lengthOf(side, 'in', 'the notch')) as [Fraction, Fraction];
  const pounds = new Fraction(form.bagPounds ?? 50);
  const feet = mortarCoverage(notch, pounds, form.backButtered ?? false);
  if (!feet) return refuse(`how much does a bag cover with a ${form.notch.join(' x ')} notch? The bag tells`);
  const assumed = `${show(feet)} sq ft a bag of ${show(pounds)} lb, the low end of published charts: the label goes first`;
  return covered(form, 1, { unit: 'bag', holds: feet }, [assumed], 'published charts by notch');
}

function grout(form: Extract<Form, { kind: 'grout' }>): FormAnswer | Refusal {
  const [length, width] = form.tile.map((side) => lengthOf(side, 'in', 'the tile')) as [Fraction, Fraction];
  const found = groutPerFoot(
    { length, width, thickness: lengthOf(form.thickness, 'in', 'the thickness') },
    lengthOf(form.joint, 'in', 'the joint'),
  );
  if (!found.ok) return found;
  const holds = new Fraction(form.bagPounds).div(found.value);
  return covered(form, 1, { unit: 'bag', holds }, [found.working], "joint volume at 1.6 kg a litre, tilers' reference");
}

function sealant(form: Extract<Form, { kind: 'sealant' }>): FormAnswer | Refusal {
  const [width, depth] = form.bead.map((side) => lengthOf(side, 'in', 'the bead')) as [Fraction, Fraction];
  const tube = feetPerTube({ width, depth }, form.ounces === undefined ? undefined : new Fraction(form.ounces));
  if (!tube.ok) return tube;
  const run = lengthOf(form.run, 'ft', 'the run');
  const silly = absurdLength(run, 'a run', new Fraction(2000));
  if (silly) return silly;
  const pack = { unit: 'tube', holds: tube.feet };
  const found = cover({ extent: run, unit: 'ft', waste: new Fraction(form.waste ?? 0).div(100), pack });
  if (!found.ok) return found;
  const { working, assumptions } = found;
  return {
    ok: true,
    buy: [{ quantity: toBuy(found), unit: 'tube' }],
    working: `${tube.working}; ${working}`,
    assumptions,
    source: 'volume of the bead; 231/128 cu in a fluid ounce',
  };
}

function holes({ holes: count, diameter, depth, bagPounds }: Extract<Form, { kind: 'holes' }>): FormAnswer | Refusal {
  if (!Number.isInteger(count) || count <= 0 || count > 200) return refuse(`${count} holes: is that right?`);
  const one = holeVolume({ diameter: inches(diameter, 'a hole'), depth: inches(depth, 'the depth') });
  if (!one.ok) return one;
  const total = one.cubicFeet.mul(count);
  const bags = total.div(BAG_YIELD[bagPounds]!);
  return {
    ok: true,
    buy: [{ quantity: bags.ceil().valueOf(), unit: 'bag' }],
    working: `${one.working}; x ${count} = ${show(total)} cu ft; ${show(BAG_YIELD[bagPounds]!)} cu ft a bag: ${show(bags)}`,
    assumptions: ['no post taken out of the concrete'],
    source: 'bag yield pages',
  };
}

function batts({ wall, spacing, height, batt }: Extract<Form, { kind: 'batts' }>): FormAnswer | Refusal {
  const bays = baysOf(inches(wall, 'the wall', 'ft'), inches(spacing, 'the spacing'));
  if (!bays.ok) return bays;
  const found = battsOf(bays.count, { height: inches(height, 'the height', 'ft'), batt: inches(batt, 'a batt') });
  return found.ok ? counted({ ...found, working: `${bays.working}; ${found.working}` }) : found;
}

function cuts({ pieces, stock, kerf }: Extract<Form, { kind: 'cutList' }>): FormAnswer | Refusal {
  const found = cutList({
    pieces: pieces.map(({ length, count }) => ({ length: inches(length, 'a piece'), count })),
    onHand: [],
    stock: stock.map((length) => inches(length, 'the stock', 'ft')),
    kerf: inches(kerf ?? '1/8', 'the blade'),
  });
  if (!found.ok) return found;
  return {
    ok: true,
    buy: found.buy.map(({ length, count }) => ({ quantity: count, unit: `stick of ${show(length.div(12))} ft` })),
    working: found.working,
    assumptions: kerf ? [] : ['1/8 in for the blade, common practice'],
    source: found.proved ? 'arithmetic: every smaller purchase is ruled out' : ARITHMETIC,
  };
}
