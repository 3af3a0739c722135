import type { Term, Vocabulary } from '../types.ts';
import { APPLIANCES } from './data/appliances.ts';
import { AREAS } from './data/areas.ts';
import { CONCRETE } from './data/concrete.ts';
import { DEEDS } from './data/deeds.ts';
import { DEFECTS } from './data/defects.ts';
import { DOORS } from './data/doors.ts';
import { DRYWALL } from './data/drywall.ts';
import { ELECTRICAL } from './data/electrical.ts';
import { FAILINGS } from './data/failings.ts';
import { FINISHES } from './data/finishes.ts';
import { FLOORING } from './data/flooring.ts';
import { HARDWARE } from './data/hardware.ts';
import { HVAC } from './data/hvac.ts';
import { LANDSCAPE } from './data/landscape.ts';
import { LOW_VOLTAGE } from './data/lowVoltage.ts';
import { LUMBER } from './data/lumber.ts';
import { PAINT } from './data/paint.ts';
import { PLUMBING } from './data/plumbing.ts';
import { ROLES } from './data/roles.ts';
import { ROOFING } from './data/roofing.ts';
import { SERVICES } from './data/services.ts';
import { SHELL } from './data/shell.ts';
import { SHORTHAND } from './data/shorthand.ts';
import { SPANISH } from './data/spanish.ts';
import { SUNDRIES } from './data/sundries.ts';
import { SURFACES } from './data/surfaces.ts';
import { TASKS } from './data/tasks.ts';
import { TILE } from './data/tile.ts';
import { TOOLS } from './data/tools.ts';
import { termsOf } from './sheet.ts';
import { vocabularyOf } from './vocabulary.ts';

const SHEETS = [
  ...[TILE, PAINT, DRYWALL, LUMBER, HARDWARE, FLOORING, ELECTRICAL, LOW_VOLTAGE, PLUMBING, HVAC, APPLIANCES],
  ...[
    ROOFING,
    SHELL,
    SERVICES,
    SUNDRIES,
    SHORTHAND,
    CONCRETE,
    DOORS,
    LANDSCAPE,
    TOOLS,
    SURFACES,
    AREAS,
    ROLES,
    FINISHES,
    DEFECTS,
    FAILINGS,
    TASKS,
    DEEDS,
    SPANISH,
  ],
].flat();

let built: Vocabulary | undefined;

/** The trade's words that ship with the product; built on first use. */
export function builtIn(): Vocabulary {
  built ??= vocabularyOf(terms());
  return built;
}

/** A firm's own words added to a vocabulary; theirs win over the built-in ones of the same name. */
export function withTerms(base: Vocabulary, extra: readonly Term[]): Vocabulary {
  return vocabularyOf([...base.terms, ...extra]);
}

/** Every built-in term, from the data sheets. */
export function terms(): Term[] {
  return SHEETS.flatMap(termsOf);
}
