import { fraction } from './reckoned.ts';

/** The safe end of what is published; a textbook's example 16-3 takes 0.38 ft of tape and 0.005 gal of compound. */
export const DRYWALL_SOURCE =
  'a screw a sq ft (estimating textbook p. 203), half a foot of tape (thebalancesmb.com), a gallon of compound for 100 sq ft (westimating.com)';

/** What a square foot of board takes. */
export const SCREWS = fraction(1);
export const TAPE_FEET = fraction('0.5');
export const COMPOUND_GALLONS = fraction('0.01');
