import { stem, wordsOf } from '../../../parser/trade/likeness.ts';

export const stems = (words: string) => new Set(words.split(' ').map(stem));
/** The verb of a task, by stem: its first word. */
export const verbOf = (task: string): string => {
  const end = task.indexOf(' ');
  return stem(end < 0 ? task : task.slice(0, end));
};
/** What a task is about: the words behind its verb. */
export const objectWords = (task: string): ReadonlySet<string> => {
  const end = task.indexOf(' ');
  return wordsOf(end < 0 ? '' : task.slice(end + 1));
};
/** Verbs for putting a thing right or in place: said one for another. */
export const PUTS = stems(
  'replace swap change install put fit hang set lay mount repair fix new finish do wrap close complete get tighten secure reset rehang redo',
);
/** Work that comes before a repair and does not end it. */
export const BEFORE = stems(
  'pull remove cut dig demo tear strip probe check test retest look measure walk tarp cover shut open buy order mark expose hose wash wait call text ask phone email book schedule price',
);
/** Getting a thing somewhere. */
export const CARRIES = stems('get take bring drop run deliver haul send return carry');
/** Words that end whatever they are said of. */
export const ENDS = stems('finish complete wrap done handle close');
