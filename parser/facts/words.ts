/** The closed classes of English as talked on site: small words that mark where things begin and end. */
const set = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/));

export const SUBJECT_PRONOUNS = set(
  "i we you he she they it i'm i've i'll i'd we're we've we'll we'd you're you've you'll he's he'll he'd she's she'll she'd they're they've they'll they'd it's it'll it'd that's that'll there's there're there im ive ill thats theres hes shes theyre weve nobody somebody someone everybody everyone who's who",
);
export const OBJECT_PRONOUNS = set("it them em 'em this that these those him her one ones everything all both");
export const DETERMINERS = set(
  'the a an this that these those my our your his her their its some any every each another both no all whole',
);
export const COPULAS = set(
  "is are was were be been am being isn't aren't wasn't weren't ain't 's 're looks seems feels sounds smells got gets getting stays is/are come comes came",
);
export const HAVES = set("has have had haven't hasn't hadn't i've we've they've you've ive weve");
export const MODALS = set(
  "will would can could should shall might may must gonna gotta wanna won't wouldn't can't cant cannot couldn't shouldn't wont dont don't doesn't doesnt didn't didnt do does did i'll we'll he'll she'll they'll you'll it'll that'll i'd we'd he'd let's lets let",
);
export const NEGATIONS = set(
  "not no n't never none nothing isn't aren't wasn't weren't ain't don't dont doesn't doesnt didn't didnt won't wont can't cant cannot couldn't wouldn't shouldn't hasn't haven't without nobody neither nor",
);
export const CONJUNCTIONS = set(
  'and but so or then cause cuz because plus & + also & anyway anyways okay ok oh well alright otherwise',
);
export const SUBORDINATORS = set(
  'before after till until til when if once unless while since which where that what whether as like than how why b4 whichever who whatever',
);
export const PREPOSITIONS = set(
  'in on at of for from to with by under over behind off into onto around about above below between through against along across near beside inside outside past up down out without within per next toward towards after before underneath beneath upon',
);
export const ADVERBS = set(
  'now already just still too also really very pretty only maybe probably almost about around right again finally today yet though anyway anyways all ever actually basically kind sort kinda sorta well please even much there here back away together good fine okay ok great though tight solid up down out in on off over through',
);
/** Openers that say nothing: stripped from the front of a clause. */
export const OPENERS = set(
  'and but so or then cause cuz because plus also anyway anyways okay ok oh well alright now just like um uh yeah yep yes right hey hi boss man so, please & + - alrighty actually basically otherwise only still fyi note update',
);
/** Clause-final particles that say "it is in place". */
export const IN_PLACE = set(
  'in on up down done finished complete completed together installed good set ready over through closed off out',
);

export const isNegative = (word: string) => NEGATIONS.has(word) || word.endsWith("n't");

const SMALL = [SUBJECT_PRONOUNS, OBJECT_PRONOUNS, DETERMINERS, COPULAS, HAVES, MODALS, NEGATIONS, CONJUNCTIONS];
const SMALL_TOO = [SUBORDINATORS, PREPOSITIONS, ADVERBS, OPENERS, IN_PLACE];
/** True for a word of the closed classes, which no tagger need be asked about. */
export const isSmall = (word: string) => [...SMALL, ...SMALL_TOO].some((words) => words.has(word));
