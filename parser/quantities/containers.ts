/** Containers take an s when there is more than one; measures and their abbreviations never do. */
const containers = new Set(
  'bag box bucket bundle can case coil gallon kit length pack pail roll sheet stick tin tub tube'.split(' '),
);

/** `bags`, `boxes`, `sq ft`. */
export const unitWord = (unit: string, overOne: boolean): string =>
  overOne && containers.has(unit) ? `${unit}${unit.endsWith('x') ? 'es' : 's'}` : unit;
