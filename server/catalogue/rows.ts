import { parse } from 'csv-parse/sync';
import Fraction from 'fraction.js';
import { tokenise } from '../../parser/hearing/tokens.ts';
import { readQuantities } from '../../parser/quantities/index.ts';
import { remembered } from '../../parser/remembered.ts';

/** One line of a firm's price list. */
export interface CatalogueRow {
  /** Where it stands in the file, counted from 1. */
  line: number;
  item: string;
  size: string | null;
  /** What one is bought by, singular: `box`, `bag`, `each`. */
  unit: string;
  /** What one of them holds: 11.5 sq ft; null where it is one of itself. */
  pack: { holds: Fraction; unit: string } | null;
  /** Of one unit, in the firm's own money; null where the list has none yet. */
  price: Fraction | null;
  supplier: string;
}

export type CatalogueReading = { ok: true; rows: CatalogueRow[] } | { ok: false; wrong: string[] };

const COLUMNS = {
  item: /^(?:item|product|description|name|material)$/,
  size: /^(?:size|dimensions?)$/,
  unit: /^(?:unit|uom|sold by|each)$/,
  pack: /^(?:pack|pack size|holds|contents?|coverage|qty per unit|per unit)$/,
  price: /^(?:price|cost|unit price|unit cost|amount)$/,
  supplier: /^(?:supplier|vendor|store|shop|from|yard)$/,
} as const;
type Column = keyof typeof COLUMNS;
const NEEDED: readonly Column[] = ['item', 'price', 'supplier'];

const MOST_ROWS = 20_000;
const MOST_SHOWN = 12;

/**
 * Reads a price list as a spreadsheet saves it: comma, semicolon or tab, quotes, any order of columns. All or nothing:
 * one wrong line refuses the file, and each is named with what to do.
 */
export function readCatalogue(text: string): CatalogueReading {
  const table = tableOf(text);
  if ('wrong' in table) return { ok: false, wrong: [table.wrong] };
  const [header, ...body] = table.records;
  if (!header)
    return { ok: false, wrong: ['The file is empty. Give it a first line: item,size,unit,pack,price,supplier.'] };
  const places = placesIn(header.record);
  const lacking = NEEDED.filter((column) => places[column] === undefined);
  if (lacking.length)
    return {
      ok: false,
      wrong: [
        `line ${header.info.lines}: no column called ${lacking.join(' or ')}. The first line must name the columns: item,size,unit,pack,price,supplier.`,
      ],
    };
  if (body.length > MOST_ROWS)
    return { ok: false, wrong: [`${body.length} lines are too many: ${MOST_ROWS} at most. Split the list.`] };
  const wrong: string[] = [];
  const rows: CatalogueRow[] = [];
  const seen = new Map<string, number>();
  for (const { record, info } of body) {
    const line = info.lines;
    const cell = (column: Column) => (places[column] === undefined ? '' : (record[places[column]] ?? '').trim());
    if (record.length > header.record.length)
      wrong.push(
        `line ${line}: ${record.length} cells where the first line has ${header.record.length}. Put quotes round a cell that holds a comma.`,
      );
    else {
      const row = rowOf(line, cell);
      if (typeof row === 'string') wrong.push(row);
      else {
        const key = [row.item, row.size, row.unit, row.supplier].join('|').toLowerCase();
        const first = seen.get(key);
        if (first) wrong.push(`line ${line}: the same as line ${first}. Keep one of them.`);
        seen.set(key, first ?? line);
        rows.push(row);
      }
    }
  }
  if (!wrong.length) return { ok: true, rows };
  const more = wrong.length - MOST_SHOWN;
  return { ok: false, wrong: more > 0 ? [...wrong.slice(0, MOST_SHOWN), `and ${more} more lines`] : wrong };
}

interface Record {
  record: string[];
  info: { lines: number };
}

function tableOf(text: string): { records: Record[] } | { wrong: string } {
  const first = text.split(/\r?\n/, 1)[0] ?? '';
  const delimiter = [',', ';', '\t'].reduce((best, mark) => (count(first, mark) > count(first, best) ? mark : best));
  try {
    const records = parse(text, {
      delimiter,
      bom: true,
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      skip_records_with_empty_values: true,
    }) as unknown as Record[];
    return { records };
  } catch (error) {
    const line = typeof error === 'object' && error !== null && 'lines' in error ? `line ${String(error.lines)}: ` : '';
    return {
      wrong: `${line}the quotes do not close or open inside a cell. Write an inch mark in quotes as two: "12"" tile".`,
    };
  }
}

const count = (text: string, mark: string) => text.split(mark).length - 1;

function placesIn(header: readonly string[]): Partial<{ [column in Column]: number }> {
  const names = header.map((name) => name.trim().toLowerCase().replace(/[_-]+/g, ' '));
  const found = (Object.keys(COLUMNS) as Column[]).map(
    (column) => [column, names.findIndex((n) => COLUMNS[column].test(n))] as const,
  );
  return Object.fromEntries(found.filter(([, place]) => place >= 0));
}

function rowOf(line: number, cell: (column: Column) => string): CatalogueRow | string {
  const item = cell('item');
  const supplier = cell('supplier');
  if (!item) return `line ${line}: no item. Name the goods, or take the line out.`;
  if (!supplier) return `line ${line}: no supplier for ${item}. Say who sells it.`;
  const price = priceOf(cell('price'));
  if (price === undefined)
    return `line ${line}: the price "${cell('price')}" of ${item} is no amount. Write 12.50, or leave it empty.`;
  const pack = packOf(cell('pack'));
  if (pack === undefined)
    return `line ${line}: the pack "${cell('pack')}" of ${item} cannot be read. Write what one holds: 11.5 sq ft, 50 lb, 8.`;
  return { line, item, size: cell('size') || null, unit: unitOf(cell('unit')), pack, price, supplier };
}

/** Undefined: something stands there that is no amount. */
function priceOf(text: string): Fraction | null | undefined {
  const bare = text.replace(/^[^\d.,-]+|[^\d.,]+$/g, '').trim();
  if (!text) return null;
  // 1,299.00 and 1.299,00; a comma before two last digits is a decimal one.
  const plain = /,\d{2}$/.test(bare) ? bare.replace(/\./g, '').replace(',', '.') : bare.replace(/,(?=\d{3})/g, '');
  return /^\d+(?:\.\d+)?$/.test(plain) ? new Fraction(plain) : undefined;
}

/** What one holds: `11.5 sq ft`. Null where nothing is told, undefined where the words are no amount. */
export const packOf = remembered((text): CatalogueRow['pack'] | undefined => {
  if (!text) return null;
  const [amount] = readQuantities(tokenise(text), text).quantities;
  if (!amount || amount.value.compare(0) <= 0) return undefined;
  const unit = amount.unit ?? 'each';
  return amount.value.compare(1) === 0 && unit === 'each' ? null : { holds: amount.value, unit };
});

/** `Boxes`, `bx` and `box` are one unit, spelt as the parser spells it. */
export const unitOf = remembered((text): string => {
  if (!text) return 'each';
  const said = `1 ${text.toLowerCase()}`;
  return readQuantities(tokenise(said), said).quantities[0]?.unit ?? text.toLowerCase();
});
