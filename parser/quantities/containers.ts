import { plural } from './plural.ts';

/** Containers take an s when there is more than one; measures and their abbreviations never do. */
const containers = new Set(
  'bag box bucket bundle can case coil gallon kit length pack pail roll sheet stick tin tub tube'.split(' '),
);

/** `bags`, `boxes`, `sticks of 8 ft`, `sq ft`. */
export function unitWord(unit: string, overOne: boolean): string {
  const [container = unit] = unit.split(' of ');
  if (!overOne || !containers.has(container)) return unit;
  return plural(container) + unit.slice(container.length);
}
