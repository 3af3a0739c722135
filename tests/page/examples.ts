import type { Field } from '../../server/page/app/reckon/fields.ts';

/** What somebody would have typed who filled in every field as its empty box shows. */
export function examples(fields: readonly Field[], under = ''): [string, string][] {
  return fields.flatMap((field) => exampleOf(field, under + field.name));
}

function exampleOf(field: Field, name: string): [string, string][] {
  switch (field.as) {
    case 'length':
    case 'number':
    case 'words':
      return [[name, field.example]];
    case 'pair':
      return field.example.map((side, k) => [`${name}.${k}`, side]);
    case 'lengths':
      return [[name, field.example.join('\n')]];
    case 'choice':
      return [[name, String(field.of[0]![0])]];
    case 'known':
      return [[name, 'no']];
    case 'group':
      return examples(field.of, `${name}.`);
    case 'rows':
      return [...examples(field.of, `${name}.0.`), ...examples(field.of, `${name}.1.`)];
  }
}
