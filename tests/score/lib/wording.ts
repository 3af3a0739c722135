/**
 * Whether two wordings mean the same thing, leniently: "replaced the cracked tiles" and "swap tile, cracked" share
 * what matters. Word order, endings and small words do not count.
 */

const SMALL = new Set(
  (
    'a an the this that these those it its of on in at to for from with by and or but so if is are was were be been ' +
    'i we you he she they me us them my our your his her their there here about around over up down off out all each ' +
    'some any no more just also then now still again back got get have has had do does did need needs one'
  ).split(' '),
);

/** Words of the trade that a careful reader would take for one another; the first of a row stands for all. */
const SAME = [
  'outlet receptacle plug',
  'drywall sheetrock plasterboard gypsum gyprock',
  'faucet tap',
  'toilet commode loo wc',
  'bathroom bath',
  'caulk sealant caulking silicone',
  'glue adhesive',
  'repair fix mend',
  'replace swap change',
  'install put set hang mount fit lay',
  'break broken broke busted',
  'buy pick grab purchase order',
  'check test inspect look verify',
  'baseboard skirting',
  'paint painting coat',
  'send return',
  'remove pull demo tear',
].map((row) => row.split(' '));

const ENDINGS: readonly (readonly [RegExp, string])[] = [
  [/['’]s$/, ''],
  [/(?<=\w{2})ies$/, 'y'],
  [/(?<=\w{2})ied$/, 'y'],
  [/(?<=(?:ch|sh|s|x|z))es$/, ''],
  [/(?<=\w{2}[^s])s$/, ''],
  [/(?<=\w{3})ing$/, ''],
  [/(?<=\w{3})ed$/, ''],
  // "cutting" and "cut", "tiled" and "tile" come to one form.
  [/([bdgmnprt])\1$/, '$1'],
  [/(?<=\w{3})e$/, ''],
];

function root(word: string): string {
  return ENDINGS.reduce((w, [ending, left]) => w.replace(ending, left), word);
}

const HEAD = new Map(SAME.flatMap((row) => row.map((word) => [root(word), root(row[0]!)] as const)));

/** Words that count, each brought to one form. */
export function contentWords(text: string): Set<string> {
  const found = text.toLowerCase().match(/[\p{L}\d][\p{L}\d'’.]*/gu) ?? [];
  const plain = found.map((word) => word.replace(/[.'’]+$/, '')).filter((word) => word && !SMALL.has(word));
  return new Set(plain.map(root).map((word) => HEAD.get(word) ?? word));
}

/** Share, 0 to 1, of the wanted words that `text` holds. A compound counts either way: "back splash" is "backsplash". */
export function share(wanted: string, text: string): number {
  const want = [...contentWords(wanted)];
  if (want.length === 0) return 1;
  const have = contentWords(text);
  const joined = text.toLowerCase().replace(/[^\p{L}\d]+/gu, '');
  return want.filter((word) => have.has(word) || (word.length > 5 && joined.includes(word))).length / want.length;
}
