/** A number typed by hand as an exact fraction: `1 3/8` and `1-3/8` are `11/8`, `2.5` is `5/2`. Null for anything else. */
export function exactOf(typed: string): string | null {
  const mixed = /^\s*(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\/([1-9]\d*)\s*$/.exec(typed);
  if (mixed) return reduced(Number(mixed[1] ?? 0) * Number(mixed[3]) + Number(mixed[2]), Number(mixed[3]));
  const decimal = /^\s*(\d*)(?:\.(\d{1,6}))?\s*$/.exec(typed);
  if (!decimal || !(decimal[1] || decimal[2])) return null;
  const scale = 10 ** (decimal[2]?.length ?? 0);
  return reduced(Number(`${decimal[1]}${decimal[2] ?? ''}`), scale);
}

export function decimalOf(exact: string): number {
  const [top = 0, bottom = 1] = exact.split('/').map(Number);
  return top / bottom;
}

function reduced(top: number, bottom: number): string {
  const shared = common(top, bottom);
  return bottom === shared ? String(top / shared) : `${top / shared}/${bottom / shared}`;
}

const common = (a: number, b: number): number => (b ? common(b, a % b) : a);
