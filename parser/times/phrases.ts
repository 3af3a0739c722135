/** Phrase tables are asked at every word of every note: only those that open with it are compared. */
export function byFirstWord<Row extends readonly [words: readonly string[], ...rest: unknown[]]>(
  rows: readonly Row[],
): ReadonlyMap<string, readonly Row[]> {
  const map = new Map<string, Row[]>();
  for (const row of rows) map.set(row[0][0]!, [...(map.get(row[0][0]!) ?? []), row]);
  return map;
}
