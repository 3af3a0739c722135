/** What a form asks, as data: one drawing and one reading serve every calculator and check. */
interface Named {
  /** As the reckoning calls it. */
  name: string;
  label: string;
  /** May be left out. */
  may?: true;
}

export type Field = Named &
  (
    | {
        /** `length` goes on as it was typed: `12 ft 6 in`, `3/8`, `2.4 m`. */
        as: 'length' | 'number' | 'words';
        /** Shown in the empty box. */
        example: string;
      }
    | { as: 'pair'; example: readonly [string, string] }
    /** Lengths one after another, such as each riser. */
    | { as: 'lengths'; example: readonly string[] }
    | { as: 'choice'; of: readonly (readonly [value: string | number, words: string])[] }
    /** Yes, no, or not known: no guess is made of what nobody knows. */
    | { as: 'known' }
    /** Several figures that make one thing; with `rows` as many of them as there are. */
    | { as: 'group' | 'rows'; of: readonly Field[] }
  );

/** One thing that can be worked out, in the words of who asks. */
export interface Question {
  /** Its `kind` among the calculators, its `of` among the checks. */
  key: string;
  words: string;
  /** How its goods are called on the order; none for a check. */
  goods?: string;
  fields: readonly Field[];
}

/** What was typed, by field name; `opening.0.width` within a row. */
type Typed = (name: string) => string;

/** The fields as typed into one object, what was left empty left out. */
export function readFields(fields: readonly Field[], typed: Typed, under = ''): Record<string, unknown> {
  const read = fields.map((field): [string, unknown] => [field.name, readField(field, typed, under + field.name)]);
  return Object.fromEntries(read.filter(([, value]) => value !== undefined));
}

function readField(field: Field, typed: Typed, name: string): unknown {
  const text = typed(name).trim();
  switch (field.as) {
    case 'length':
    case 'words':
      return text || undefined;
    case 'number':
      return text ? Number(text) : undefined;
    case 'pair': {
      const sides = [0, 1].map((side) => typed(`${name}.${side}`).trim());
      return sides.every(Boolean) ? sides : undefined;
    }
    case 'lengths':
      return text ? text.split(/[\n,;]/).flatMap((one) => one.trim() || []) : undefined;
    case 'choice':
      return field.of.find(([value]) => String(value) === text)?.[0];
    case 'known':
      return text ? text === 'yes' : undefined;
    case 'group': {
      const group = readFields(field.of, typed, `${name}.`);
      return field.of.every((part) => part.may || part.name in group) ? group : undefined;
    }
    case 'rows': {
      const rows = Array.from({ length: MOST_ROWS }, (_, k) => readFields(field.of, typed, `${name}.${k}.`));
      // A row is there once its first figure is; its yes-or-no alone is none.
      const filled = rows.filter((row) => field.of[0]!.name in row);
      return filled.length ? filled : undefined;
    }
  }
}

/** More kinds of cable or pieces than this come of no one form. */
export const MOST_ROWS = 20;
