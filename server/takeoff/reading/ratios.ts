import type Fraction from 'fraction.js';

/** One `per` holds, covers or makes `value` of `unit`; `unit` null where the speaker left it to the goods. */
export interface Ratio {
  value: Fraction;
  unit: string | null;
  per: string;
  /** Where in the words it stands. */
  at: number;
  /** How it came about, for the working, where it was reckoned. */
  note?: string;
}

/** What a note says of packs: what each holds, covers or measures. */
export interface PacksTold {
  ratios: Ratio[];
  /** `60 lb`, `2.5 L`: the pack's own size, where it names the goods. */
  packSize: string | null;
  /** Width and length of a roll, feet, where both were told. */
  roll: { width: Fraction; length: Fraction } | null;
  /** Figures that tell how goods are sold. */
  sold: Set<number>;
  /** Figures that are spoken for. */
  used: Set<number>;
}
