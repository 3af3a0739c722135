/** Lower case, with straight apostrophes, whichever a phone sets. */
export const lowered = (text: string): string => text.toLowerCase().replaceAll('’', "'");

/** As the index keeps it: lower case, without the apostrophe of "plumber's" and "doesn't", which dictation leaves out. */
export const plain = (word: string): string =>
  word.includes("'") ? word.toLowerCase().replace(/'(?=s\b|t\b|$)/g, '') : word.toLowerCase();

/** Singular as they stand. */
const NOT_PLURAL = /(?:ss|us|sis)$/;
const ALIKE = new Set([
  'always',
  'axis',
  'brass',
  'canvas',
  'lens',
  'perhaps',
  'series',
  'texas',
  'this',
  'trellis',
  'yes',
]);
const IRREGULAR: ReadonlyMap<string, string> = new Map(
  Object.entries({
    feet: 'foot',
    halves: 'half',
    knives: 'knife',
    leaves: 'leaf',
    niches: 'niche',
    shelves: 'shelf',
    teeth: 'tooth',
    ties: 'tie',
  }),
);

/** The singular of a plural noun by rule, and of the few that follow none. Any other word comes back as it was. */
export function singular(word: string): string {
  const odd = IRREGULAR.get(word);
  if (odd) return odd;
  // Elbows go by their bend, however short: "four 90s".
  if (word.length < 4 && !/^\d\ds$/.test(word)) return word;
  if (!word.endsWith('s') || NOT_PLURAL.test(word) || ALIKE.has(word)) return word;
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (/(?:ches|shes|xes|sses)$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
}
