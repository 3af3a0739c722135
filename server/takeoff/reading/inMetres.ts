import { noReadings } from './readOnce.ts';
import type { Said } from './said.ts';

const restated = new WeakMap<Said, Said>();

/** "The box room's 3.6 by 3.8": where an earlier note of the place spoke in metres, bare sides are metres too. */
export function inMetres(said: Said): Said {
  const known = restated.get(said);
  if (known) return known;
  const figures = [...said.figures];
  const metre = (id: string): boolean => {
    const figure = figures[Number(id)]!;
    if (figure.unit !== null || figure.value.compare(30) > 0) return false;
    figures[Number(id)] = { ...figure, unit: 'm', kind: 'length', sure: true };
    return true;
  };
  const words = said.words.replace(/\{N(\d+)\} ?(x|by) ?\{N(\d+)\}/g, (all, a: string, by: string, b: string) =>
    metre(a) && metre(b) ? `{L${a}} ${by} {L${b}}` : all,
  );
  const told = { ...said, words, figures, readings: noReadings() };
  restated.set(said, told);
  return told;
}
