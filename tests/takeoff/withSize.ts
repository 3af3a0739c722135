/** The form with another size at a path: `tile.0`. */
export function withSize<T extends object>(form: T, path: string, size: string): T {
  const copy = structuredClone(form);
  const keys = path.split('.');
  let at = copy as Record<string, unknown>;
  for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>;
  at[keys.at(-1)!] = size;
  return copy;
}
