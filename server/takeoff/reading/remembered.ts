/** More texts than the notes of a long job; the oldest go first. */
const MOST = 32_000;

/** The same text reads the same: a job's old notes are not read again with each new one. */
export function remembered<T>(read: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const reading = read(text);
    if (known.size >= MOST) known.delete(known.keys().next().value!);
    known.set(text, reading);
    return reading;
  };
}
