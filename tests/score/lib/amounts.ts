/** Units by what they measure, each in a base unit, so that 6 ft 8 in and 80 in are the same amount. */
const SCALES: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  length: { in: 25.4, ft: 304.8, yd: 914.4, mm: 1, cm: 10, m: 1000 },
  area: { 'sq in': 0.00064516, 'sq ft': 0.09290304, 'sq yd': 0.83612736, 'sq m': 1 },
  volume: { 'fl oz': 0.0295735295625, pt: 0.473176473, qt: 0.946352946, gal: 3.785411784, ml: 0.001, l: 1 },
  bulk: { 'cu ft': 1, 'cu yd': 27 },
  weight: { oz: 28.349523125, lb: 453.59237, g: 1, kg: 1000 },
  pressure: { psi: 6.894757293, kpa: 1, bar: 100 },
};

/** Other spellings; goods counted by the piece are `each`, whatever the piece is called. */
const SPELLINGS: Readonly<Record<string, string>> = {
  lf: 'ft',
  'lin ft': 'ft',
  sf: 'sq ft',
  m2: 'sq m',
  sqm: 'sq m',
  litre: 'l',
  liter: 'l',
  piece: 'each',
  sheet: 'each',
  board: 'each',
  stick: 'each',
  length: 'each',
  pair: 'each',
  pkg: 'package',
  pack: 'package',
};

function canonical(unit: string | null): string {
  if (unit === null) return 'each';
  const spelt = unit.toLowerCase().trim();
  return SPELLINGS[spelt] ?? spelt;
}

/** One amount, however it is written. No unit stands for `each`; unlike kinds are never the same. */
export function sameAmount(a: number, unitA: string | null, b: number, unitB: string | null): boolean {
  const [from, to] = [canonical(unitA), canonical(unitB)];
  const scale = Object.values(SCALES).find((units) => from in units && to in units);
  if (!scale && from !== to) return false;
  const [x, y] = scale ? [a * scale[from]!, b * scale[to]!] : [a, b];
  return Math.abs(x - y) <= 1e-6 * Math.max(1, Math.abs(x), Math.abs(y));
}
