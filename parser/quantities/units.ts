import Fraction from 'fraction.js';
import type { UnitKind } from '../types.ts';

/** One unit as the product writes it, with every way it is said. Factors are exact, to the base of its kind. */
interface UnitRow {
  unit: string;
  kind: UnitKind;
  /** Exact factor to the kind's base unit (in, sq in, cu in, g, s, psi …); absent where nothing converts. */
  factor?: string;
  names: string;
  /** Counts only directly after a number: also an everyday word or a preposition. */
  close?: true;
}

// Length, area, volume and mass factors: 16 CFR 500.19 and NIST SP 811 App. B (1 in = 25.4 mm, 1 gal = 231 cu in, 1 lb = 453.59237 g, all exact).
const ROWS: readonly UnitRow[] = [
  { unit: 'in', kind: 'length', factor: '1', names: 'inch inches inchs " ″ ” in ins pulgada pulgadas pulg' },
  {
    unit: 'ft',
    kind: 'length',
    factor: '12',
    names:
      "foot feet ft ' ′ ’ lf running-feet running-foot lineal-feet lineal-foot linear-feet linear-foot liner-feet liner-foot linear-ft lineal-ft lin-ft lnft lft lineal linear footer footers pie pies",
  },
  { unit: 'yd', kind: 'length', factor: '36', names: 'yard yards yd yds yarda yardas' },
  {
    unit: 'mm',
    kind: 'length',
    factor: '5/127',
    names: 'mm millimetre millimetres millimeter millimeters milímetro milímetros milimetro milimetros mil',
  },
  {
    unit: 'mil',
    kind: 'length',
    factor: '1/1000',
    names: 'mils thou thousandths thousandth thousandths-of-an-inch thousandth-of-an-inch',
  },
  {
    unit: 'cm',
    kind: 'length',
    factor: '50/127',
    names: 'cm centimetre centimetres centimeter centimeters centímetro centímetros centimetro centimetros',
  },
  {
    unit: 'm',
    kind: 'length',
    factor: '5000/127',
    names:
      'm metre metres meter meters mtr mtrs mts metro metros lineal-metres lineal-metre lineal-meters linear-metres linear-meters lin-m lm running-metres running-meters',
  },
  { unit: 'km', kind: 'length', factor: '5000000/127', names: 'km kilometre kilometres kilometer kilometers' },
  { unit: 'bd ft', kind: 'volume', factor: '144', names: 'board-foot board-feet bd-ft bf' },
  { unit: 'sq in', kind: 'area', factor: '1', names: 'square-inch square-inches sq-in in2' },
  {
    unit: 'sq ft',
    kind: 'area',
    factor: '144',
    names: 'square-foot square-feet square-ft sq-ft sqft sf ft2 sq.ft sq.-ft',
  },
  { unit: 'sq yd', kind: 'area', factor: '1296', names: 'square-yard square-yards sq-yd sq-yds sy' },
  {
    unit: 'sq m',
    kind: 'area',
    factor: '25000000/16129',
    names: 'square-metre square-metres square-meter square-meters sq-m sqm m2 m²',
  },
  {
    unit: 'sq mm',
    kind: 'area',
    factor: '25/16129',
    names:
      'sq-mm sqmm mm2 mm² square-mm square-mil square-millimetre square-millimetres square-millimeter square-millimeters',
  },
  // 43,560 sq ft: NIST Handbook 44, App. C.
  { unit: 'acre', kind: 'area', factor: '6272640', names: 'acre acres' },
  { unit: 'square', kind: 'area', factor: '14400', names: 'square squares sq', close: true },
  { unit: 'cu in', kind: 'volume', factor: '1', names: 'cubic-inch cubic-inches cu-in' },
  { unit: 'cu ft', kind: 'volume', factor: '1728', names: 'cubic-foot cubic-feet cu-ft cf' },
  { unit: 'cu yd', kind: 'volume', factor: '46656', names: 'cubic-yard cubic-yards cu-yd cu-yds cy cyd cyds' },
  {
    unit: 'cu m',
    kind: 'volume',
    factor: '125000000000/2048383',
    names: 'cube cubes cubic-metre cubic-metres cubic-meter cubic-meters cu-m cum m3 m³',
  },
  { unit: 'gal', kind: 'volume', factor: '231', names: 'gallon gallons gal gals galón galon galones' },
  { unit: 'qt', kind: 'volume', factor: '231/4', names: 'quart quarts qt qts' },
  { unit: 'pt', kind: 'volume', factor: '231/8', names: 'pint pints pt' },
  { unit: 'cup', kind: 'volume', factor: '231/16', names: 'cup cups' },
  { unit: 'fl oz', kind: 'volume', factor: '231/128', names: 'fluid-ounce fluid-ounces fl-oz' },
  {
    unit: 'L',
    kind: 'volume',
    factor: '125000000/2048383',
    names: 'litre litres liter liters l ltr ltrs litro litros',
  },
  {
    unit: 'ml',
    kind: 'volume',
    factor: '125000/2048383',
    names: 'ml mls millilitre millilitres milliliter milliliters',
  },
  { unit: 'lb', kind: 'weight', factor: '45359237/100000', names: 'pound pounds lb lbs # libra libras' },
  { unit: 'oz', kind: 'weight', factor: '45359237/1600000', names: 'ounce ounces oz onza onzas' },
  { unit: 'g', kind: 'weight', factor: '1', names: 'g gram grams gramme grammes' },
  { unit: 'kg', kind: 'weight', factor: '1000', names: 'kg kilo kilos kilogram kilograms' },
  { unit: 'ton', kind: 'weight', factor: '45359237/50', names: 'ton tons t tn' },
  { unit: 'tonne', kind: 'weight', factor: '1000000', names: 'tonne tonnes metric-ton metric-tons' },
  { unit: 'psi', kind: 'pressure', names: 'psi pounds-per-square-inch pounds-a-square-inch psig' },
  { unit: 'kPa', kind: 'pressure', names: 'kpa kilopascal kilopascals' },
  { unit: 'bar', kind: 'pressure', names: 'bar' },
  {
    unit: 'in wc',
    kind: 'pressure',
    names: 'inches-of-water inch-water-column in-wc "-wc "wc ″-wc "-w.c iwc inches-water-column',
  },
  { unit: 'in Hg', kind: 'pressure', names: 'inches-of-mercury inch-of-mercury in-hg inhg' },
  { unit: 'F', kind: 'temperature', names: 'f °f fahrenheit degrees-fahrenheit degree-fahrenheit degrees-f deg-f' },
  { unit: 'C', kind: 'temperature', names: 'c °c celsius centigrade degrees-celsius degrees-c degree-c deg-c' },
  { unit: 'deg', kind: 'angle', names: 'degree degrees deg ° grados grado' },
  { unit: '%', kind: 'percent', names: '% percent per-cent pct por-ciento' },
  { unit: 'A', kind: 'current', names: 'amp amps ampere amperes a amperios' },
  { unit: 'kV', kind: 'voltage', names: 'kv kilovolt kilovolts' },
  { unit: 'mV', kind: 'voltage', names: 'mv millivolt millivolts' },
  { unit: 'mA', kind: 'current', names: 'milliamp milliamps ma' },
  { unit: 'V', kind: 'voltage', names: 'volt volts v vac voltios' },
  { unit: 'W', kind: 'power', names: 'watt watts w' },
  { unit: 'Ah', kind: 'other', names: 'amp-hour amp-hours ah' },
  { unit: 'kWh', kind: 'other', names: 'kilowatt-hour kilowatt-hours kwh' },
  { unit: 'kW', kind: 'power', names: 'kilowatt kilowatts kw' },
  { unit: 'hp', kind: 'power', names: 'hp horsepower horse' },
  { unit: 'BTU', kind: 'power', names: 'btu btus btuh' },
  { unit: 'ohm', kind: 'other', names: 'ohm ohms Ω' },
  { unit: 'kohm', kind: 'other', names: 'kohm kohms kilohm kilohms k-ohm k-ohms' },
  { unit: 'megohm', kind: 'other', names: 'megohm megohms mohm mohms' },
  { unit: 'cfm', kind: 'flow', names: 'cfm cubic-feet-per-minute cubic-feet-a-minute' },
  { unit: 'cfh', kind: 'flow', names: 'cfh scfh cubic-feet-per-hour cubic-feet-an-hour' },
  { unit: 'gph', kind: 'flow', names: 'gph gallons-per-hour gallons-an-hour' },
  { unit: 'gpm', kind: 'flow', names: 'gpm gallons-per-minute gallons-a-minute' },
  { unit: 'mph', kind: 'speed', names: 'mph miles-an-hour mile-an-hour miles-per-hour mile-per-hour' },
  { unit: 'kcmil', kind: 'gauge', names: 'kcmil mcm' },
  { unit: 'gauge', kind: 'gauge', names: 'gauge gage ga' },
  { unit: 'AWG', kind: 'gauge', names: 'awg' },
  { unit: 'grit', kind: 'other', names: 'grit' },
  { unit: 'penny', kind: 'other', names: 'penny' },
  { unit: 'ppm', kind: 'other', names: 'ppm' },
  { unit: 'MPa', kind: 'pressure', names: 'mpa megapascal megapascals' },
  { unit: 'Pa', kind: 'pressure', names: 'pa pascal pascals' },
  { unit: 'ksi', kind: 'pressure', names: 'ksi' },
  { unit: 'kip', kind: 'other', names: 'kip kips' },
  { unit: 'plf', kind: 'other', names: 'plf pounds-per-lineal-foot pounds-per-linear-foot' },
  { unit: 'kHz', kind: 'other', names: 'khz kilohertz' },
  { unit: 'MHz', kind: 'other', names: 'mhz megahertz' },
  { unit: 'GHz', kind: 'other', names: 'ghz gigahertz' },
  { unit: 'kN', kind: 'other', names: 'kn kilonewton kilonewtons' },
  { unit: 'lumen', kind: 'other', names: 'lumen lumens' },
  { unit: 'lux', kind: 'other', names: 'lux' },
  { unit: 'foot-candle', kind: 'other', names: 'foot-candle foot-candles' },
  { unit: 'uF', kind: 'other', names: 'uf mfd microfarad microfarads' },
  { unit: 'pcf', kind: 'other', names: 'pcf pounds-per-cubic-foot pounds-a-cubic-foot' },
  { unit: 'dB', kind: 'other', names: 'db decibel decibels' },
  { unit: 'Hz', kind: 'other', names: 'hz hertz' },
  { unit: 'rpm', kind: 'speed', names: 'rpm rpms' },
  { unit: 'VA', kind: 'power', names: 'va volt-amps' },
  { unit: 'K', kind: 'other', names: 'kelvin' },
  { unit: 'kVA', kind: 'power', names: 'kva' },
  { unit: 'Gbps', kind: 'other', names: 'gbps' },
  { unit: 'Mbps', kind: 'other', names: 'mbps megabits' },
  { unit: 'psf', kind: 'pressure', names: 'psf pounds-per-square-foot pounds-a-square-foot' },
  { unit: 'gpf', kind: 'other', names: 'gpf gallons-per-flush gallons-a-flush' },
  { unit: 'fpm', kind: 'speed', names: 'fpm feet-per-minute' },
  { unit: 'm/s', kind: 'speed', names: 'metres-per-second meters-per-second metres-a-second meters-a-second' },
  { unit: 'L/s', kind: 'flow', names: 'litres-per-second liters-per-second litres-a-second liters-a-second' },
  { unit: 'micron', kind: 'other', names: 'micron microns' },
  { unit: 'ms', kind: 'other', names: 'ms millisecond milliseconds' },
  {
    unit: 'lpm',
    kind: 'flow',
    names: 'lpm l/min litres-per-minute liters-per-minute litres-a-minute liters-a-minute litres-per-min litres-a-min',
  },
  { unit: 'pH', kind: 'other', names: 'ph' },
  { unit: 'in-lb', kind: 'torque', names: 'in-lb in-lbs inch-pound inch-pounds' },
  { unit: 'ft-lb', kind: 'torque', names: 'ft-lb ft-lbs foot-pound foot-pounds' },
  { unit: 'Nm', kind: 'torque', names: 'nm newton-metres newton-meters' },
  { unit: 'sec', kind: 'time', factor: '1', names: 'sec secs seconds' },
  { unit: 'min', kind: 'time', factor: '60', names: 'minute minutes min mins minuto minutos' },
  { unit: 'hr', kind: 'time', factor: '3600', names: 'hour hours hr hrs h hora horas' },
  { unit: 'day', kind: 'time', factor: '86400', names: 'day days dia dias día días' },
  { unit: 'week', kind: 'time', factor: '604800', names: 'week weeks wk wks semana semanas' },
  { unit: 'month', kind: 'time', names: 'month months mes meses' },
  { unit: 'year', kind: 'time', names: 'year years yr yrs año años' },
  { unit: 'each', kind: 'count', names: 'each ea nr nrs pc pcs piece pieces pce pces pieza piezas' },
  { unit: 'pair', kind: 'count', names: 'pair pairs pr prs pares' },
  {
    unit: 'bag',
    kind: 'pack',
    names: 'bag bags bg bgs bolsa bolsas saco sacos costal costales bulto bultos sack sacks',
  },
  { unit: 'box', kind: 'pack', names: 'box boxes bx bxs caja cajas' },
  { unit: 'case', kind: 'pack', names: 'case cases cs' },
  { unit: 'roll', kind: 'pack', names: 'roll rolls rl rls rollo rollos' },
  { unit: 'tube', kind: 'pack', names: 'tube tubes tb tubo tubos' },
  { unit: 'sheet', kind: 'pack', names: 'sheet sheets sht shts sh hoja hojas' },
  { unit: 'bundle', kind: 'pack', names: 'bundle bundles bdl bdls bndl bndls' },
  { unit: 'bucket', kind: 'pack', names: 'bucket buckets bkt bkts cubeta cubetas' },
  { unit: 'pail', kind: 'pack', names: 'pail pails' },
  { unit: 'tub', kind: 'pack', names: 'tub tubs', close: true },
  { unit: 'can', kind: 'pack', names: 'can cans lata latas', close: true },
  { unit: 'tin', kind: 'pack', names: 'tin tins', close: true },
  { unit: 'jar', kind: 'pack', names: 'jar jars' },
  { unit: 'bottle', kind: 'pack', names: 'bottle bottles btl' },
  {
    unit: 'pack',
    kind: 'pack',
    names: 'pack packs pk pks pkg pkgs package packages packet packets pkt pkts paquete paquetes',
  },
  { unit: 'pallet', kind: 'pack', names: 'pallet pallets skid skids pal' },
  { unit: 'stick', kind: 'pack', names: 'stick sticks', close: true },
  { unit: 'length', kind: 'pack', names: 'length lengths lth lths lgth lgths tramo tramos', close: true },
  { unit: 'coil', kind: 'pack', names: 'coil coils', close: true },
  {
    unit: 'barrow',
    kind: 'pack',
    names: 'barrow barrows barrowload barrowloads barrow-load barrow-loads wheelbarrows',
    close: true,
  },
  { unit: 'bale', kind: 'pack', names: 'bale bales' },
  { unit: 'crate', kind: 'pack', names: 'crate crates' },
  { unit: 'jug', kind: 'pack', names: 'jug jugs' },
  { unit: 'reel', kind: 'pack', names: 'reel reels', close: true },
  { unit: 'spool', kind: 'pack', names: 'spool spools' },
  { unit: 'drum', kind: 'pack', names: 'drum drums', close: true },
  { unit: 'load', kind: 'pack', names: 'load loads', close: true },
  { unit: 'kit', kind: 'pack', names: 'kit kits' },
  { unit: 'set', kind: 'pack', names: 'set sets', close: true },
  { unit: 'keg', kind: 'pack', names: 'keg kegs' },
  { unit: 'batch', kind: 'pack', names: 'batch batches' },
  { unit: 'carton', kind: 'pack', names: 'carton cartons ctn ctns' },
  { unit: 'cartridge', kind: 'pack', names: 'cartridge cartridges' },
  { unit: 'sleeve', kind: 'pack', names: 'sleeve sleeves' },
  { unit: 'scoop', kind: 'pack', names: 'scoop scoops' },
  { unit: 'row', kind: 'count', names: 'row rows course courses', close: true },
  { unit: 'coat', kind: 'count', names: 'coat coats capa capas', close: true },
];

export interface Unit {
  unit: string;
  kind: UnitKind;
  /** Everyday word: counts as a unit only with a number directly before it. */
  close: boolean;
}

const BY_NAME = new Map<string, Unit>();
const FACTORS = new Map<string, { kind: UnitKind; factor: Fraction }>();
for (const row of ROWS) {
  const unit = { unit: row.unit, kind: row.kind, close: row.close ?? false };
  for (const name of row.names.split(' ')) BY_NAME.set(name.replaceAll('-', ' '), unit);
  BY_NAME.set(row.unit.toLowerCase(), BY_NAME.get(row.unit.toLowerCase()) ?? unit);
  if (row.factor) FACTORS.set(row.unit, { kind: row.kind, factor: new Fraction(row.factor) });
}

/** The unit that words name ("sq ft", "linear feet", "bx"), or null. Words lower case, joined by single blanks. */
export const unitNamed = (words: string): Unit | null => BY_NAME.get(words) ?? null;

/**
 * Converts exactly within one kind of unit; null where the kinds differ or nothing converts.
 * Source of the factors: 16 CFR 500.19; NIST SP 811 Appendix B.
 */
export function convert(value: Fraction, from: string, to: string): Fraction | null {
  if (from === to) return value;
  const a = FACTORS.get(from);
  const b = FACTORS.get(to);
  return a && b && a.kind === b.kind ? value.mul(a.factor).div(b.factor) : null;
}
