import Fraction from 'fraction.js';
import { compare, dependsOn, type Verdict } from './verdict.ts';

const room = (of: string, figure: Fraction, limit: number, source: string): Verdict =>
  compare({ of, figure, limit: new Fraction(limit), unit: 'in', must: 'be at least', source });

/** Center of the bowl to the nearest wall, tub or vanity at its side, inches. */
export const toiletSide = (center: Fraction): Verdict =>
  room('toilet side clearance', center, 15, 'IPC 405.3.1, IRC P2705.1, UPC 402.5');

/** Center to center with the next fixture, inches. */
export const toiletCenters = (apart: Fraction): Verdict => room('fixture centers', apart, 30, 'IPC 405.3.1, UPC 402.5');

/** Front of the bowl to what is before it, inches: the two model codes differ. */
export const toiletFront = (front: Fraction): Verdict => twoCodes('toilet front clearance', front);

/** Front of a lavatory to what is before it, inches. */
export const lavatoryFront = (front: Fraction): Verdict => twoCodes('sink front clearance', front);

function twoCodes(of: string, front: Fraction): Verdict {
  const strict = room(of, front, 24, 'UPC 402.5 (IRC R307.1 and IPC 405.3.1: 21 in)');
  const loose = room(of, front, 21, 'IRC R307.1, IPC 405.3.1 (UPC 402.5: 24 in)');
  if (strict.result === 'fits') return strict;
  return loose.result === 'fits' ? dependsOn(strict, 'which plumbing code is adopted: 21 in or 24 in') : loose;
}

/** Least inside of a shower, inches. */
export const showerInside = (least: Fraction): Verdict => room('shower inside', least, 30, 'IRC P2708.1, R307.1');

/** Clear floor before the opening of a shower, inches. */
export const showerFront = (front: Fraction): Verdict => room('shower front clearance', front, 24, 'IRC R307.1');
