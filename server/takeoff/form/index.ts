import Fraction from 'fraction.js';
import type { Refusal } from '../calculators/reckoned.ts';
import { atSpacing, gapsUnder, sideBySide } from '../calculators/spacing.ts';
import type { Form } from './asked.ts';
import { type CheckAnswer, type CheckForm, checkForm } from './check.ts';
import { ARITHMETIC, counted, covered, type FormAnswer, inches } from './covered.ts';
import { grout, holes, mortar, sealant, slab } from './fillings.ts';
import { WrongMeasure, wrongNumber } from './measure.ts';
import { batts, cuts, run } from './pieces.ts';
import { board, walls } from './walls.ts';

export type { Form } from './asked.ts';
export type { CheckAnswer, CheckForm } from './check.ts';
export type { FormAnswer } from './covered.ts';

/** Answers a form with its working, or says in words why it cannot. Never a number from absurd input. */
export const reckonForm = (form: Form): FormAnswer | Refusal => orWhyNot(form, () => answer(form));

/** Answers a fit check by form: each verdict with figure, limit and source, or in words why the sizes cannot be right. */
export const askCheck = (form: CheckForm): CheckAnswer | Refusal => orWhyNot(form, () => checkForm(form));

function orWhyNot<T>(form: object, reckon: () => T): T | Refusal {
  const wrong = wrongNumber(form);
  if (wrong) return wrong;
  try {
    return reckon();
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
    case 'slab':
      return slab(form);
    case 'walls':
      return walls(form);
    case 'board':
      return board(form);
    case 'run':
      return run(form);
    case 'batts':
      return batts(form);
    case 'cutList':
      return cuts(form);
  }
}
