import { wordSet } from '../words.ts';
import type { ClaimRule } from './claim.ts';

/** People and beasts: who is told of is not bought, set or measured. */
const FOLK = wordSet(
  'guys kids men people folks boys lads girls ladies women fellas blokes mates friends workers helpers laborers labourers brothers sisters sons daughters ' +
    'uncles aunts cousins nephews nieces grandkids grandsons granddaughters neighbors neighbours customers clients tenants electricians plumbers carpenters ' +
    'painters apprentices masons roofers inspectors foremen tilers plasterers sparkies chippies framers strangers teenagers toddlers babies ' +
    'subs crews drivers operators finishers journeymen fellows lodgers ' +
    'dogs cats pups puppies kittens cows chickens goats sheep squirrels raccoons mice rats bees wasps pigeons',
);
/** "Painters tape", "carpenters pencils": goods. */
const THEIRS = /^(?:tape|caulk|putty|plastic|pencils?|glue|square|squares|mate|knife|knives|rods?|tool|tools)$/;
const WHOSE = wordSet('the my our his her your their those these them');
/** What may stand before them: "two of the new guys". */
const DESCRIBED = wordSet(
  'new other good young big little old different drunk extra more angry lazy temp decent bad grown',
);

/** "Three of my uncles", "nine pups", "two guys": a head is counted, no goods. */
export const folk: ClaimRule = (line, i) => {
  const number = line.number(i);
  if (number?.shape !== 'whole' || number.article) return null;
  let k = number.until;
  if (line.word(k) === 'of' && WHOSE.has(line.word(k + 1))) k += 2;
  if (DESCRIBED.has(line.word(k))) k++;
  if (!FOLK.has(line.word(k)) || THEIRS.test(line.word(k + 1))) return null;
  return { until: number.until, kind: 'idiom' };
};
