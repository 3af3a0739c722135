import type Fraction from 'fraction.js';

/** A piece of floor, wall, run or hole as told, in feet. */
export interface Shape {
  kind: 'rectangle' | 'room' | 'run' | 'area' | 'volume';
  /** Sides in feet: two of a rectangle, length and width of a room, one of a run. */
  sides: Fraction[];
  /** Square or cubic feet of a shape told by its area or volume. */
  amount: Fraction | null;
  count: number;
  /** The place that it was said of: `closet`. */
  label?: string | null;
  working: string;
}

/** Slack left at each end, box or fitting, or once at the panel. */
export interface MakeUp {
  /** Feet. */
  length: Fraction;
  at: 'end' | 'box' | 'fitting' | 'once' | 'run';
  /** How many boxes or fittings, where that was said. */
  count: number | null;
}

/** The sizes of a place, or of a run, as told. */
export interface Extent {
  shapes: Shape[];
  /** Feet: height of walls, or of a room. */
  height: Fraction | null;
  /** Feet: thickness of a fill. */
  depth: Fraction | null;
  /** Doors and windows, each in feet. */
  openings: { width: Fraction; height: Fraction | null; count: number; door: boolean }[];
  /** Square feet told to come off. */
  lessArea: Fraction;
  /** Square feet told to come off in each of the places; those are in `lessArea` once all are read. */
  lessEach: Fraction;
  /** Feet told to come off a run. */
  lessLength: Fraction;
  /** Slack at ends and boxes that a run needs beside its length. */
  makeUp: MakeUp[];
  /** One side said again: "24 long, not 22". Feet. */
  corrected: { from: Fraction; to: Fraction }[];
  /** A size was told in what is no measure: "six cubits". */
  unknownUnit: string | null;
  /** How bare figures were read, where that is a guess: told with the working. */
  assumed: string | null;
  /** Two figures were said and nobody knows which. */
  doubt: string | null;
}

/** Words behind a figure that make it a side, in a pattern. */
export const SIDE =
  '(?: (?:wide|long|tall|high|deep|across|in length|in width|length|width|run|of run|(?:along|up) the [a-z]+))?';
