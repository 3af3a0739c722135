import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { show } from '../calculators/reckoned.ts';
import { sizeText } from './lengths.ts';
import { makeUpShapes } from './makeUp.ts';
import type { Extent, Shape } from './shapes.ts';
import type { Work } from './work.ts';

const UNITS = { area: 'sq ft', length: 'ft', volume: 'cu ft' } as const;

/** Longer sides than these are asked about, in feet: small rooms, rooms, runs and grounds. Common practice, no source. */
const LONGEST = { small: 40, room: 300, ground: 2000 };

/** A pour or fill thicker than this is asked about, in feet: "400 deep" was told in millimetres. Common practice, no source. */
const THICKEST = 6;

const SMALL = /\b(?:bath(?:room)?|powder|closet|pantry|laundry|shower|mud ?room|hall bath|vanity|half bath)\b/;

function longestOf({ goods, area }: Work, shape: Shape): number {
  const room = shape.kind === 'room' && goods.by === 'length' && !/fenc|rail|pipe|hose|drip|gutter/.test(goods.item);
  if (goods.by !== 'area') return room ? LONGEST.room : LONGEST.ground;
  if (/sod|turf|fabric|wrap|fence|paver/.test(goods.item)) return LONGEST.ground;
  return SMALL.test(area ?? '') ? LONGEST.small : LONGEST.room;
}

/** Net extent in square feet, feet or cubic feet, with its working; a string is the question that it raises. */
export function extentOf(work: Work, extent: Extent): { value: Fraction; unit: string; working: string } | string {
  const { goods, metric } = work;
  const where = work.area ? ` in the ${work.area}` : '';
  const silly = absurd(work, extent);
  if (silly) return silly;
  const unit = UNITS[goods.by];
  const makeUp = goods.by === 'length' ? makeUpShapes(extent.makeUp, runsOf(extent)) : [];
  const parts = [...extent.shapes, ...makeUp].flatMap((shape) => amountsOf(work, extent, shape));
  let value = parts.reduce((sum, part) => sum.add(part.value), new Fraction(0));
  let told = parts.map((part) => part.text).join(' + ');
  if (goods.by === 'volume' && !extent.shapes.some((s) => s.kind === 'volume')) {
    if (!extent.depth) return `How thick is the ${goods.item}${where}?`;
    if (extent.depth.compare(THICKEST) > 0)
      return `${sizeText(extent.depth, metric)} thick for the ${goods.item}: is that right?`;
    value = value.mul(extent.depth);
    told = `${parts.length > 1 ? `(${told})` : told} x ${sizeText(extent.depth, metric)} thick`;
  }
  if (value.compare(0) <= 0) return `What size is ${work.area ? `the ${work.area}` : 'it'} for the ${goods.item}?`;
  const less = openingsOf(work, extent);
  if (less.compare(value) >= 0 && less.compare(0) > 0)
    return `The openings are larger than the ${goods.item}: are the sizes right?`;
  const net = value.sub(less);
  const shown = (amount: Fraction) => amountText(amount, unit, metric);
  const off = less.compare(0) > 0 ? `, less ${shown(less)} = ${shown(net)}` : '';
  const guess = extent.assumed ? `${extent.assumed}: ` : '';
  return { value: net, unit, working: `${guess}${told} = ${shown(value)}${off}` };
}

const runsOf = (extent: Extent) =>
  extent.shapes.reduce((sum, shape) => sum + (shape.kind === 'run' ? shape.count : 0), 0);

/** Sides that cannot be, and tile that does not fit its floor. */
function absurd(work: Work, extent: Extent): string | null {
  const { goods, metric } = work;
  const where = work.area ? ` in the ${work.area}` : '';
  for (const shape of extent.shapes) {
    const most = longestOf(work, shape);
    const side = shape.sides.find((s) => s.compare(0) <= 0 || s.compare(most) > 0);
    if (side) return `${sizeText(side, metric)} for the ${goods.item}${where}: is that right?`;
    const area = shape.kind === 'area' ? shape.amount : null;
    if (area && (area.compare(0) <= 0 || area.compare(most === LONGEST.small ? most * most : (most * most) / 4) > 0))
      return `${amountText(area, 'sq ft', metric)} for the ${goods.item}${where}: is that right?`;
    const room = shape.sides.length === 2 ? longer(shape.sides[0]!, shape.sides[1]!) : null;
    if (room && goods.sides && longer(...goods.sides).compare(room.mul(12)) > 0)
      return `${goods.size} ${goods.item} is larger than ${sizeText(room, metric)}${where}: is that right?`;
  }
  return null;
}

const longer = (a: Fraction, b: Fraction) => (a.compare(b) >= 0 ? a : b);

interface Part {
  value: Fraction;
  text: string;
}

/** What one shape adds: a room gives its floor, its walls, its ceiling or its perimeter, by the goods. */
function amountsOf(work: Work, extent: Extent, shape: Shape): Part[] {
  const { goods, parts, metric } = work;
  const text = (f: Fraction) => sizeText(f, metric);
  const times = shape.count > 1 ? `${shape.count} x ` : '';
  const [a, b] = shape.sides;
  if (goods.by === 'length') {
    if (!a) return [];
    const around = b && (shape.kind === 'room' || parts.around);
    if (!around)
      return [
        { value: a.mul(shape.count), text: shape.working.includes('in ') ? shape.working : `${times}${text(a)}` },
      ];
    return [{ value: a.add(b).mul(2).mul(shape.count), text: `${times}2 x (${text(a)} + ${text(b)})` }];
  }
  if (a && b && shape.kind === 'room' && extent.height && goods.by === 'area' && wallsMeant(work)) {
    const walls = {
      value: a.add(b).mul(2).mul(extent.height).mul(shape.count),
      text: `${times}2 x (${text(a)} + ${text(b)}) x ${text(extent.height)}`,
    };
    const ceiling = { value: a.mul(b).mul(shape.count), text: `${times}${text(a)} x ${text(b)} ceiling` };
    return parts.ceiling ? [walls, ceiling] : [walls];
  }
  if (a && b) return [{ value: a.mul(b).mul(shape.count), text: `${times}${text(a)} x ${text(b)}` }];
  if (a && extent.height && goods.by === 'area')
    return [{ value: a.mul(extent.height).mul(shape.count), text: `${times}${text(a)} x ${text(extent.height)}` }];
  return shape.amount ? [{ value: shape.amount.mul(shape.count), text: `${times}${shape.working}` }] : [];
}

/** What comes off: areas of openings, or their widths along a run. */
function openingsOf({ goods }: Work, extent: Extent): Fraction {
  let less = goods.by === 'area' ? extent.lessArea : extent.lessLength;
  // What runs along the ceiling passes over them.
  const above = /crown|coving|cornice|picture rail/.test(goods.item);
  for (const { width, height, count } of extent.openings) {
    if (above) continue;
    if (goods.by === 'length') less = less.add(width.mul(count));
    else if (height && goods.by === 'area') less = less.add(width.mul(height).mul(count));
  }
  return less;
}

/** In the note's own measure: `34.4 sq m`. */
function amountText(amount: Fraction, unit: string, metric: boolean): string {
  const to = unit === 'sq ft' ? 'sq m' : unit === 'ft' ? 'm' : null;
  const metres = metric && to ? convert(amount, unit, to) : null;
  return metres ? `${show(metres)} ${to}` : `${show(amount)} ${unit}`;
}

const wallsMeant = ({ goods, parts }: Work) =>
  parts.walls ||
  (!parts.ceiling &&
    /paint|primer|wall|drywall|board|panel|plaster|texture/.test(goods.item) &&
    !/floor|ceiling/.test(goods.item));
