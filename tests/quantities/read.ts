import { tokenise } from '../../parser/hearing/tokens.ts';
import { readQuantities } from '../../parser/quantities/index.ts';

export const read = (text: string) => readQuantities(tokenise(text), text);

/** Every reading as `value unit "quote"`, exact: `2 1/2 bag "two and a half bags"`. */
export const said = (text: string) =>
  read(text).quantities.map((q) => `${q.value.toFraction(true)} ${q.unit ?? '-'} "${q.quote}"`);
