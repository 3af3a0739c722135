/** What is laid, and how long it takes where no label time was said. */
export interface Product {
  name: string;
  /** Words that name it. */
  named: RegExp;
  /** Hours at about 70 F: the safe end of the published range. */
  hours: number;
  source: string;
}

/** What may come after, once it has set. */
export interface Step {
  verb: string;
  /** The step is named as what comes next. */
  said: RegExp;
  /** Where this step takes another time than the product's own. */
  hours?: number;
}

/** One kind of work that must set, cure or dry. */
export interface Work {
  /** The work is told as done. */
  done: RegExp;
  products: readonly Product[];
  steps: readonly Step[];
  /** How cold slows it: cement doubles for each 14.4 F under 70, compound and solvent go by their tables, paint has a floor. */
  cold?: 'cement' | 'compound' | 'paint' | 'solvent';
}

const WEEKDAY = '(?:on |this |next )?(?:mon|tues|wednes|thurs|fri|satur|sun)day';

/** Words that name a step as what comes next, or plan it. */
export const next = (what: string, after = ''): RegExp =>
  new RegExp(
    `\\b(?:${what})\\b(?: it| this| that| the \\w+| over it)?(?:'s| is| are)? (?:is |are )?next\\b|\\b(?:then|before|ready to|good to|okay to|ok to|safe to|fit to|when do we|when do i|can|gonna|going to|want to|wants to|wanna|start|plan(?:ning)? to|so|i'll|we'll|will) (?:we |i |any |the )?(?:${what})\\b|\\b(?:${what})(?: on)?(?: it| this| that| the \\w+)? (?:tonight|tomorrow|today|later|in \\{T\\d+|this afternoon|this aft|after|${WEEKDAY})\\b|\\bto (?:${what}) (?:it|this|that|them|the \\w+)\\b|\\b(?:${what}) (?:guys?|man|crew|sub|setter)(?:'s| is| are)? (?:coming|due|booked|here|in)\\b|\\b(?:${what})(?: [a-z]+){0,2} (?:waits?|holds?)(?: off)? (?:till|til|until)\\b|^(?:${what}) (?:it|this|that|them|the \\w+)\\b${after ? `|${after}` : ''}`,
  );
