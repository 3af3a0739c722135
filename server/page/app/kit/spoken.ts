/** Units as they are written on a list, and as they are said: one, several. */
const units: Readonly<Record<string, [string, string]>> = {
  'sq ft': ['square foot', 'square feet'],
  'sq in': ['square inch', 'square inches'],
  'sq yd': ['square yard', 'square yards'],
  'cu ft': ['cubic foot', 'cubic feet'],
  'cu in': ['cubic inch', 'cubic inches'],
  'cu yd': ['cubic yard', 'cubic yards'],
  in: ['inch', 'inches'],
  ft: ['foot', 'feet'],
  yd: ['yard', 'yards'],
  gal: ['gallon', 'gallons'],
  qt: ['quart', 'quarts'],
  oz: ['ounce', 'ounces'],
  lb: ['pound', 'pounds'],
  h: ['hour', 'hours'],
  min: ['minute', 'minutes'],
};
const measured = new RegExp(
  `(\\d[\\d.,]*(?:[-/]\\d+)*(?:/\\d+)?) (${Object.keys(units).join('|')})\\b(?! (?:the|an?)\\b)`,
  'g',
);

/** A line as somebody would read it out: a voice says "no. 7" as a refusal and "in" as a place. */
export const spoken = (line: string): string =>
  line
    .replace(/\b[Nn]o\. (?=\d)/g, 'number ')
    .replace(/(\d(?: in| ft)?) x (?=\d)/g, '$1 by ')
    .replace(
      measured,
      (_, amount: string, unit: string) => `${amount} ${units[unit]![/^1$|^\d+\/\d+$/.test(amount) ? 0 : 1]}`,
    )
    .replace(/(\d)-(\d+\/\d)/g, '$1 and $2')
    .replace(/\+ (?=\d)/g, 'plus ')
    .replace(/(\d) %/g, '$1 percent');
