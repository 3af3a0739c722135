/** How lines are put together on the page and on paper alike. Pure. */

/** In the order in which their groups were first met. */
export function groupBy<T>(lines: readonly T[], nameOf: (line: T) => string): [string, T[]][] {
  const groups = new Map<string, T[]>();
  for (const line of lines) {
    const name = nameOf(line);
    groups.set(name, [...(groups.get(name) ?? []), line]);
  }
  return [...groups];
}

export const noArea = 'No area';

/** As the job names its areas, then others as they were first met; what no area was said of comes last. */
export function byArea<T extends { area: string | null }>(
  areas: readonly string[],
  items: readonly T[],
): [string, T[]][] {
  const rank = (name: string) => (areas.includes(name) ? areas.indexOf(name) : areas.length + Number(name === noArea));
  return groupBy(items, (item) => item.area ?? noArea).sort(([a], [b]) => rank(a) - rank(b));
}
