import Fraction from 'fraction.js';
import { labelsIn } from './rectangles.ts';
import type { Extent } from './shapes.ts';

export const restates = (words: string) =>
  /\b(?:not|actually|remeasured|measured (?:it )?again|wrong|misread|correction|instead|really|should be|make (?:that|it|the)|came out|cut down|changed|(?:wants|want|made|making) (?:it|that|this) (?:a bit |much )?(?:bigger|smaller|longer|shorter|wider|narrower))\b/.test(
    words,
  );
export const adds = (words: string) =>
  /\b(?:also|another|as well|too)\b|\bplus (?!\{P)|\badd (?!\{[PN]|on\b|for\b|extra)/.test(words);

/** Sizes meet what stands: added where the words add, one place put right where they name it, else in its stead. */
export function meetExtent(old: Extent | null, fresh: Extent, again: boolean, words: string): Extent {
  if (!old) return fresh;
  const merged: Extent = {
    ...old,
    height: fresh.height ?? old.height,
    depth: fresh.depth ?? old.depth,
    openings: fresh.openings.length ? fresh.openings : old.openings,
    makeUp: fresh.makeUp.length ? fresh.makeUp : old.makeUp,
    lessArea: fresh.lessArea.compare(0) > 0 ? fresh.lessArea : old.lessArea,
    lessLength: fresh.lessLength.compare(0) > 0 ? fresh.lessLength : old.lessLength,
  };
  if (!again) return merged;
  if (fresh.shapes.length === 0 && fresh.corrected.length > 0) return withSides(merged, fresh.corrected);
  const shapes =
    adds(words) && !restates(words) && fresh.shapes.length > 0
      ? [...old.shapes, ...fresh.shapes]
      : fresh.shapes.length < old.shapes.length
        ? fresh.shapes.reduce(putRight, old.shapes)
        : fresh.shapes;
  return { ...merged, shapes, doubt: fresh.doubt, unknownUnit: fresh.unknownUnit, assumed: fresh.assumed };
}

/** "The back" and "the back bedroom" are one place. */
const sameLabel = (a: string | null | undefined, b: string | null | undefined): boolean =>
  Boolean(a && b) &&
  (a!.split(' ').every((w) => b!.split(' ').includes(w)) || b!.split(' ').every((w) => a!.split(' ').includes(w)));

const SKIPS =
  /[^.;]*\b(?:(?:don't|do not) (?:count|do|figure|include)|stays? (?:carpet|as is|as it is|put|the way)|comes? off the list)\b[^.;]*|\b(?:skip(?:ping)?|leave out|leaving out|forget(?: about)?|scratch|cancel|not (?:doing|painting|tiling)|no (?:more )?(?:paint|tile|floor(?:ing)?)) [^.;]*/;

/** "Skip the paint in the back bedroom": that place is left out, with its share of the openings; null where none is meant. */
export function leftOut(extent: Extent, words: string): Extent | null {
  const skipped = SKIPS.exec(words);
  if (!skipped) return null;
  const names = labelsIn(skipped[0]);
  const shapes = extent.shapes.filter((s) => !names.some((name) => sameLabel(s.label, name)));
  if (shapes.length === extent.shapes.length || shapes.length === 0) return null;
  const share = new Fraction(shapes.length, extent.shapes.length);
  return { ...extent, shapes, lessArea: extent.lessArea.mul(share), lessLength: extent.lessLength.mul(share) };
}

/** The same places with a side put right, and the height or the thickness where that is meant. */
function withSides(extent: Extent, corrected: Extent['corrected']): Extent {
  const right = (side: Fraction) => corrected.find((c) => c.from.equals(side))?.to ?? side;
  return {
    ...extent,
    shapes: extent.shapes.map((shape) => ({ ...shape, sides: shape.sides.map(right) })),
    height: extent.height && right(extent.height),
    depth: extent.depth && right(extent.depth),
  };
}

/** One of several places said again: the one of its name, else the one that shares a side, else all of them. */
function putRight(shapes: Extent['shapes'], fresh: Extent['shapes'][number]): Extent['shapes'] {
  const named = shapes.findIndex((s) => sameLabel(s.label, fresh.label));
  const shared = shapes.findIndex((s) => s.sides.some((side) => fresh.sides.some((f) => f.equals(side))));
  const at = named >= 0 ? named : shared;
  return at < 0 ? [fresh] : shapes.map((s, k) => (k === at ? fresh : s));
}
