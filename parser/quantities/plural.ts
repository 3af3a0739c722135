/** English plural of a trade word; words that end in s, i, a capital or a digit stay as they are. */
export function plural(word: string): string {
  if (!/[a-hj-rt-z]$/.test(word)) return word;
  if (/(?:ch|sh|x|z)$/.test(word)) return `${word}es`;
  return /[^aeiou]y$/.test(word) ? `${word.slice(0, -1)}ies` : `${word}s`;
}
