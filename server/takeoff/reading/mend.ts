import type { Figure } from './said.ts';

/** A way of saying a figure that only its neighbours tell: puts the figures right, gives the words back. */
export type Mend = (words: string, figures: Figure[]) => string;
