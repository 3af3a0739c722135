/** Tools and small parts for a thing that is swapped, fixed or put in, by what it is. Common practice, no source. */
export interface Kit {
  /** Names of the thing; null: anything of the counter. */
  thing: RegExp | null;
  counter: string;
  bring: readonly string[];
}

/** The first that serves a thing is taken. */
export const KITS: readonly Kit[] = [
  {
    thing: /\btoilet$/,
    counter: 'plumbing',
    bring: ['wrench', 'putty knife', 'bucket', 'rags', 'gloves', 'wax ring', 'closet bolt'],
  },
  { thing: null, counter: 'plumbing', bring: ['wrench', 'bucket', 'rags', 'thread tape'] },
  {
    thing: null,
    counter: 'electrical',
    bring: ['voltage tester', 'screwdriver', 'wire strippers', 'wire nuts', 'electrical tape'],
  },
];

/** Verbs that tell nothing of the trade: what is handled decides what they call for. */
export const HANDLES = new Set(['replace', 'swap', 'fix', 'repair', 'install', 'pull', 'remove', 'reset', 'mount']);
