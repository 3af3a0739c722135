import Fraction from 'fraction.js';
import { compare, type Verdict } from './verdict.ts';

/** Static pressure: over 80 psi a pressure-reducing valve is needed (IPC 604.8, IRC P2903.3.1). */
export const staticPressure = (psi: Fraction): Verdict =>
  compare({
    of: 'water pressure',
    figure: psi,
    limit: new Fraction(80),
    unit: 'psi',
    must: 'be at most',
    source: 'IPC 604.8, IRC P2903.3.1',
  });

/** Hot water at a tub or shower: 120 F at most (IPC 412.3, 412.5). */
export const hotWater = (fahrenheit: Fraction): Verdict =>
  compare({
    of: 'water temperature',
    figure: fahrenheit,
    limit: new Fraction(120),
    unit: 'F',
    must: 'be at most',
    source: 'IPC 412.3, 412.5; CPSC tap water scalds',
  });

export const fahrenheit = (celsius: Fraction): Fraction => celsius.mul(9).div(5).add(32);
