/**
 * The same answer again without the work: notes say the same words again and again. `most` is more texts than the notes of
 * a long job; the oldest go first.
 */
export function remembered<T>(reckon: (text: string) => T, most = 32_000): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const answer = reckon(text);
    if (known.size >= most) known.delete(known.keys().next().value!);
    known.set(text, answer);
    return answer;
  };
}
