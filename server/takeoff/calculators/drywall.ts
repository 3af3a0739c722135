import { fraction } from './reckoned.ts';

/** A construction estimating textbook, p. 203, example 16-3: for 1,000 sq ft of board. */
export const DRYWALL_SOURCE =
  'construction estimating textbook p. 203: for 1,000 sq ft 1,000 screws, 380 ft of tape, 5 gal of compound';

/** What a square foot of board takes. */
export const SCREWS = fraction(1);
export const TAPE_FEET = fraction('0.38');
export const COMPOUND_GALLONS = fraction('0.005');
