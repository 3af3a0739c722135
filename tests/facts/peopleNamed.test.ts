import { expect, it } from 'vitest';
import { followUpsIn } from './read.ts';

it.each([
  ['Luis will caulk the porch window tomorrow.', 'Luis', 'caulk porch window'],
  ['luis will caulk the porch window', 'Luis', 'caulk porch window'],
  ["Gil's gonna hang the hall door", 'Gil', 'hang hall door'],
  ['The primer is dry. Then Ines is going to sand the trim.', 'Ines', 'sand trim'],
  ["Sam'll patch the ceiling", 'Sam', 'patch ceiling'],
])('a name that opens a clause and will do work does it: %s', (text, who, task) =>
  expect(followUpsIn(text)).toMatchObject([{ who, task }]),
);

it.each(['The weather will hold till Friday.', 'Glue will set by noon.', 'Traffic will be bad tomorrow.'])(
  'nobody does it: %s',
  (text) =>
    expect(
      followUpsIn(text)
        .map(({ who }) => who)
        .filter(Boolean),
    ).toEqual([]),
);
