/** Who does things on a site or has them done, one of them or more. */
const PEOPLE = new Set(
  (
    'crew guy man woman lad boy girl fella fellow bloke lady kid mate buddy sub apprentice helper neighbor neighbour owner homeowner client customer ' +
    'tenant landlord boss super foreman wife husband missus mother father mum mom dad brother sister cousin uncle nephew niece somebody someone nobody ' +
    'everybody everyone plumber electrician sparky spark chippy brickie carpenter joiner framer roofer painter decorator drywaller plasterer tiler mason ' +
    'bricklayer glazier welder fitter installer finisher digger driver builder contractor subcontractor subbie installer supplier vendor merchant ' +
    'inspector surveyor engineer architect designer certifier assessor adjuster manager marshal realtor agent appraiser city county council utility ' +
    'hydro himself herself'
  ).split(' '),
);

export const isPerson = (word: string): boolean =>
  PEOPLE.has(word) ||
  PEOPLE.has(word.replace(/s$/, '')) ||
  PEOPLE.has(word.replace(/ies$/, 'y')) ||
  PEOPLE.has(word.replace(/men$/, 'man'));
