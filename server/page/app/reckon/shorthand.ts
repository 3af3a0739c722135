import type { Field } from './fields.ts';

/** Fields of checks in few words: what is left out is named in the answer as missing. */
export const may = true as const;
export const length = (name: string, label: string, example: string): Field => ({ name, label, as: 'length', example });
export const perhaps = (name: string, label: string, example: string): Field => ({
  ...length(name, label, example),
  may,
});
export const figure = (name: string, label: string, example: string): Field => ({
  name,
  label,
  as: 'number',
  example,
  may,
});
export const known = (name: string, label: string): Field => ({ name, label, as: 'known', may });
export const choice = (name: string, label: string, of: readonly (readonly [string | number, string])[]): Field => ({
  name,
  label,
  as: 'choice',
  of,
});
