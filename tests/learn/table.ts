import { writeFileSync } from 'node:fs';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '../..');

/** Writes a table of weights as a module: `lines` hold a feature and its hundredths, divided by tabs. */
export function writeTable(file: string, name: string, about: string, lines: readonly string[]): void {
  const text = lines.join('\n').replace(/[\\`]|\$(?=\{)/g, '\\$&');
  writeFileSync(join(ROOT, file), `/** ${about} */\nexport const ${name} = \`\n${text}\n\`;\n`);
  console.log(`${file}: ${lines.length} lines, ${text.length} characters`);
}

/** Features by name, one column of weights each; weights under `least` are left out. */
export function linesOf(columns: readonly ReadonlyMap<string, number>[], least: number): string[] {
  const names = [...new Set(columns.flatMap((column) => [...column.keys()]))].sort();
  return names.flatMap((name) => {
    const cells = columns.map((column) => {
      const weight = column.get(name) ?? 0;
      return Math.abs(weight) < least ? '' : String(Math.round(100 * weight));
    });
    return cells.some(Boolean) ? [[name, ...cells].join('\t').trimEnd()] : [];
  });
}
