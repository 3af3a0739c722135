import { type Refusal, refuse } from '../calculators/reckoned.ts';
import type { Verdict } from '../checks/verdict.ts';
import { type ElectricalCheck, electrical } from './checkElectrical.ts';
import { type FramingCheck, framing } from './checkFraming.ts';
import { type OpeningCheck, openings } from './checkOpenings.ts';
import { type PlumbingCheck, plumbing } from './checkPlumbing.ts';

/** What a form may ask of a fit check. A size that is left out is named in the answer as missing, never guessed. */
export type CheckForm = ElectricalCheck | FramingCheck | OpeningCheck | PlumbingCheck;

/** A form's fit check: every verdict that the sizes allow, each with its figure, limit, working and source. */
export interface CheckAnswer {
  ok: true;
  checks: Verdict[];
}

/** Answers a fit check by form, or says in words why the sizes given cannot be right. */
export function checkForm(form: CheckForm): CheckAnswer | Refusal {
  const checks = verdicts(form);
  return checks.length ? { ok: true, checks } : refuse('no size was given to check');
}

function verdicts(form: CheckForm): Verdict[] {
  switch (form.of) {
    case 'box fill':
    case 'wire and breaker':
    case 'receptacle':
      return electrical(form);
    case 'hole in stud':
    case 'notch in stud':
    case 'hole in joist':
    case 'notch in joist':
    case 'concrete screw':
    case 'deck boards':
      return framing(form);
    case 'stairs':
    case 'guard':
    case 'egress window':
    case 'door opening':
    case 'tile':
    case 'wood floor':
      return openings(form);
    default:
      return plumbing(form);
  }
}
