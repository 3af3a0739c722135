/** Words of days as thumbs type them, the whole word first. */
const TYPED: ReadonlyMap<string, string> = new Map(
  [
    'today tday',
    'tonight tonite tnight',
    'tomorrow tmrw tmw tmro tmoro tmrow tmorrow tomorow tommorow tommorrow tomorro tomorra tomoz tmz',
    'yesterday yday yest yesterdy ystrday yesturday',
    'since sinse sence sins',
    'overnight overnite',
    'week wk',
    'weeks wks',
    'weekend wknd wkend weekand',
    'fortnight fortnite',
    'next nxt',
    'monday mondy monady',
    'tuesday tuesdy tusday tuseday tueday',
    'wednesday wednesdy wensday wednsday wendsday wedensday',
    'thursday thursdy thrusday thurday thirsday thursd',
    'friday fridy firday frid',
    "saturday sat'day satday sat'dy satdy saturdy saterday saturady",
    'sunday sundy',
    'january janury',
    'february febuary feburary',
    'september septmber',
    'november novmber',
    'december decmber',
    'thanksgiving thxgiving',
    'christmas xmas',
  ].flatMap((row) => {
    const [whole, ...typed] = row.split(' ') as [string, ...string[]];
    return typed.map((word) => [word, whole] as const);
  }),
);

const PLAIN_VOWELS: Readonly<Record<string, string>> = { á: 'a', é: 'e', í: 'i', ó: 'o', ú: 'u' };

/** The word that the rules of days know: whole, and without the stresses that Spanish writes and phones leave out. */
export const dayWord = (word: string): string =>
  TYPED.get(word) ?? word.replace(/[áéíóú]/g, (vowel) => PLAIN_VOWELS[vowel]!);
