import type { Field } from './fields.ts';

/** Fields of questions in few words. */
export const length = (name: string, label: string, example: string): Field => ({ name, label, as: 'length', example });
export const number = (name: string, label: string, example: string): Field => ({ name, label, as: 'number', example });
export const pair = (name: string, label: string, ...example: readonly [string, string]): Field => ({
  name,
  label,
  as: 'pair',
  example,
});
export const lengths = (name: string, label: string, ...example: readonly string[]): Field => ({
  name,
  label,
  as: 'lengths',
  example,
});
export const choice = (name: string, label: string, of: readonly (readonly [string | number, string])[]): Field => ({
  name,
  label,
  as: 'choice',
  of,
});
export const rows = (name: string, label: string, of: readonly Field[]): Field => ({ name, label, as: 'rows', of });

export const group = (name: string, label: string, of: readonly Field[]): Field => ({ name, label, as: 'group', of });

/** A field that may be left out: a check names it in its answer as missing. */
export const may = (field: Field): Field => ({ ...field, may: true });
export const known = (name: string, label: string): Field => may({ name, label, as: 'known' });
