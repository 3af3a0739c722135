/** A number as said: integer numerator over denominator, so that nothing is ever rounded. */
export interface SaidNumber {
  n: number;
  d: number;
  until: number;
  /** How it was built; a fraction alone is nearly always inches. */
  shape: 'whole' | 'fraction' | 'mixed' | 'decimal';
  /** Said in words, at least in part. */
  inWords: boolean;
  /** "a", "an": counts only in front of a unit. */
  article?: true;
  /** "Dozen", "couple": counts pieces where no unit follows. */
  pieces?: true;
  /** "Thirty two and three": which part was meant cannot be known. */
  doubt?: string;
}

/** A whole number as said, tokens up to `until`. */
export interface Whole {
  n: number;
  until: number;
}
