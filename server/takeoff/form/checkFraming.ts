import Fraction from 'fraction.js';
import { concreteScrew } from '../checks/anchor.ts';
import { actualDepth, engineeredMember, holeInJoist, holeInStud, notchInJoist, notchInStud } from '../checks/boring.ts';
import { deckBoards } from '../checks/deckBoards.ts';
import type { Verdict } from '../checks/verdict.ts';
import { type Length, needed, size, WrongMeasure } from './measure.ts';

/** All lengths inches where bare. `nominal`: a 2x10 is 10; left out where the member is engineered. */
export type FramingCheck =
  | {
      of: 'hole in stud' | 'notch in stud';
      cut: Length;
      nominal: number;
      bearing?: boolean | undefined;
      doubled?: boolean | undefined;
    }
  | { of: 'hole in joist'; cut: Length; nominal?: number | undefined; engineered?: boolean | undefined }
  | {
      of: 'notch in joist';
      cut: Length;
      nominal?: number | undefined;
      engineered?: boolean | undefined;
      at?: 'end' | 'middle' | 'outer' | undefined;
    }
  | {
      of: 'concrete screw';
      diameter?: Length | undefined;
      length?: Length | undefined;
      through?: Length | undefined;
      hole?: Length | undefined;
      holeDepth?: Length | undefined;
    }
  | {
      of: 'deck boards';
      spacing: Length;
      /** Nominal inches. */
      thick?: '5/4' | '2' | undefined;
      diagonal?: boolean | undefined;
      composite?: boolean | undefined;
    };

/** @throws WrongMeasure for sizes that cannot be, and lumber that no yard sells */
export function framing(form: FramingCheck): Verdict[] {
  switch (form.of) {
    case 'concrete screw':
      return concreteScrew({
        diameter: size(form.diameter, 'the screw', 2),
        length: size(form.length, 'the screw length', 24),
        through: size(form.through, 'what is fastened', 12),
        hole: size(form.hole, 'the hole', 3),
        holeDepth: size(form.holeDepth, 'the hole depth', 24),
      });
    case 'deck boards':
      return [
        deckBoards({
          spacing: needed(size(form.spacing, 'the spacing', 48), 'the spacing'),
          thick: form.thick === undefined ? null : new Fraction(form.thick),
          diagonal: form.diagonal ?? null,
          composite: form.composite ?? false,
        }),
      ];
    case 'hole in stud':
    case 'notch in stud': {
      const stud = { width: depthOf(form.nominal), bearing: form.bearing ?? null, doubled: form.doubled ?? false };
      return [form.of === 'hole in stud' ? holeInStud(cutOf(form), stud) : notchInStud(cutOf(form), stud)];
    }
    case 'hole in joist':
      return [
        form.engineered ? engineeredMember(form.of, cutOf(form)) : holeInJoist(cutOf(form), depthOf(form.nominal)),
      ];
    case 'notch in joist':
      return [
        form.engineered
          ? engineeredMember(form.of, cutOf(form))
          : notchInJoist(cutOf(form), depthOf(form.nominal), form.at ?? null),
      ];
  }
}

const cutOf = ({ cut }: { cut: Length }): Fraction => needed(size(cut, 'the cut', 24), 'the cut');

/** Actual inches of a `2x` member. */
function depthOf(nominal: number | undefined): Fraction {
  if (nominal === undefined) throw new WrongMeasure('the size of the lumber: 2x4, 2x6, 2x8, 2x10 or 2x12?');
  const depth = actualDepth(new Fraction(nominal));
  if (!depth) throw new WrongMeasure(`a 2x${nominal}: is that right?`);
  return depth;
}
