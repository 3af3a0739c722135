import Fraction from 'fraction.js';
import { type Amount, absurdPacks, absurdWaste, type Refusal, refuse, show } from './reckoned.ts';

/** Lengths in feet. */
export interface Papering {
  /** Around the walls that are papered; doors and windows are not taken out. */
  around: Fraction;
  height: Fraction;
  roll: { width: Fraction; length: Fraction };
  /** Height of the pattern; null for a plain paper. */
  repeat: Fraction | null;
  /** `0.1` for ten per cent more rolls; null where none was said. */
  waste: Fraction | null;
}

/** Cut off at top and bottom of a drop, feet: 8 to 10 cm in all (eng.kakprosto.ru, how to calculate consumption of wallpaper). */
const TRIM = new Fraction(1, 3);

/**
 * Rolls of wallpaper by drops: so many widths around the room, so many whole drops out of a roll. The repeat of a
 * pattern is added to each drop (alsnetbiz.com, how much wallpaper do I need). Refuses a roll too short for one drop.
 */
export function papered({ around, height, roll, repeat, waste }: Papering): Amount | Refusal {
  if ([around, height, roll.width, roll.length].some((side) => side.compare(0) <= 0))
    return refuse('sizes must be more than 0');
  const silly = absurdWaste(waste ?? new Fraction(0));
  if (silly) return silly;
  const drop = height.add(TRIM).add(repeat ?? 0);
  const drops = around.div(roll.width).ceil();
  const each = roll.length.div(drop).floor();
  if (each.compare(1) < 0)
    return refuse(`a roll of ${show(roll.length)} ft is too short for a drop of ${show(drop)} ft`);
  const rolls = drops.div(each).mul(waste ? waste.add(1) : 1);
  const pack = { unit: 'roll', holds: each };
  const amount = rolls.mul(each);
  const many = absurdPacks(amount, pack);
  if (many) return many;
  return {
    ok: true,
    amount,
    unit: 'drop',
    pack,
    working: `${show(around)} ft / ${show(roll.width)} ft = ${drops.toString()} drops; ${show(drop)} ft a drop, ${each.toString()} to a roll${waste ? `; + ${show(waste.mul(100))} %` : ''}: ${show(rolls)}, so ${rolls.ceil().toString()}`,
    assumptions: [
      '4 in of each drop cut off at top and bottom',
      'doors and windows not taken out',
      ...(repeat ? [] : ['no pattern to match: say its repeat']),
    ],
    source: 'drops by the width of the roll (davesdiytips.com, wallpaper measuring and planning)',
  };
}
