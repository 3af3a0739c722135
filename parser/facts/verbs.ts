/**
 * The verbs of jobsite talk with their forms. Regular forms are made by rule; only irregular ones are listed.
 * `work` verbs say that a task is done or to be done; the others carry goods, money, speech or sight.
 */
export type VerbForm = 'base' | 's' | 'past' | 'participle' | 'ing';
export type VerbUse =
  | 'work'
  | 'buy'
  | 'need'
  | 'use'
  | 'have'
  | 'return'
  | 'say'
  | 'see'
  | 'measure'
  | 'move'
  | 'other';

export interface Verb {
  lemma: string;
  use: VerbUse;
  forms: ReadonlySet<VerbForm>;
}

const USES: Record<VerbUse, string> = {
  work: `add adjust align anchor apply assemble attach backfill balance bend bleed block bolt box brace bracket brush bury butter
    calibrate cap catch change caulk charge chisel clamp clean clear clip close coat compact conceal configure connect core correct cover
    crimp cut deliver demo demolish detach dig disassemble disconnect drain draw dress drill drop drywall dry dump elevate empty enclose
    epoxy excavate extend fabricate fasten feather feed fence file fill find finish fish fit fix flash flatten float flood flush foam
    form frame furnish fur glaze glue grade grind grout gut hang haul hook inspect install insulate inject join kill knock label
    lacquer lag land lay level lift line lock loosen lower lube mark mask mix modify mortar mount move mow mud mulch nail notch oil open orient
    paint parge patch pave pin pipe pitch place plane plant plaster plug plumb polish pour power pressure-test prime program prop protect prune
    pull pump purge putty raise ream rebuild recaulk recess recoat reconnect redo refasten refill refinish reframe refit regrout rehang reinforce
    reinstall reload remove repair repaint repipe replace replumb repoint reprogram reroute reseal reset resand restain restore restretch retape retrim rewire
    rip roll rout route rub run rake sand saw scab scarify scrape screed screw scribe seal seat secure service set shave shim shingle shut shingle
    silicone sister size skim slope smooth snake soap solder space splice split spray spread square stack stain stake stap staple start
    stop straighten strap strip stub stucco stuff support swap sweep sweat tack tamp tape tarp tap tear terminate texture thread tidy tie
    tighten tile tin torque touch trace treat trench trim trowel tuck tune turn undercut unclog unhook unload update upgrade
    vacuum varnish vent wash waterproof wax weatherstrip weld winterize wipe wire wrap complete rework relocate redrill repack re-read
    redirect rebend recut remake resecure reattach repin replan replug straightline bag swing strike insert pack dust rod jet scope
    commission energize reverse fog degloss spackle joint butt mitre miter bevel cope ease hinge hone knead lap level screen shore sheath side sod
    excavate slurry stretch suspend swage test tent thin top tow truss ventilate weatherproof whitewash yank dish burn bore bead blow acclimate 
    build make get-in bring-up put stick plate furr zip hot-mop rekey rescreen regrade reglaze lime render skirt point second-fix first-fix chase back-butter`,
  buy: 'buy order purchase grab',
  need: 'need want require',
  use: 'use burn-through',
  have: 'have',
  return: 'return exchange',
  say: 'say tell think figure reckon guess mention swear claim ask call email text phone notify remind schedule confirm book',
  see: 'see look notice check verify watch recheck review photograph',
  measure: 'measure read sit stick stand come hit show hold weigh draw average',
  move: 'go come leave arrive show stop start keep head finish meet',
  other:
    'be do get take bring send pick give let try know like love hope work fail help wait stay happen turn put kick throw lose break crack leak drip rot stain rub slam flicker trip buzz hum squeak smell sound feel seem swell bubble peel warp rust bind sag sweat weep clog overflow wobble rattle settle pop blow freeze latch stick cup bow crown gap curl delaminate fade chip dent scratch tear bend kink quit die vary differ match charge cost pay spend run owe walk talk eat drive sign approve pass haul rent hire bid quote send drop cure sleep supply receive ship miss forget remember cancel skip scratch change plan own decide choose choose pick prefer swap expect miscut mismeasure set',
};

const IRREGULAR: Record<string, [past: string, participle: string]> = {
  be: ['was', 'been'],
  bend: ['bent', 'bent'],
  blow: ['blew', 'blown'],
  break: ['broke', 'broken'],
  bring: ['brought', 'brought'],
  build: ['built', 'built'],
  burn: ['burnt', 'burnt'],
  buy: ['bought', 'bought'],
  catch: ['caught', 'caught'],
  choose: ['chose', 'chosen'],
  come: ['came', 'come'],
  cost: ['cost', 'cost'],
  cut: ['cut', 'cut'],
  dig: ['dug', 'dug'],
  do: ['did', 'done'],
  draw: ['drew', 'drawn'],
  drive: ['drove', 'driven'],
  eat: ['ate', 'eaten'],
  feed: ['fed', 'fed'],
  feel: ['felt', 'felt'],
  find: ['found', 'found'],
  fit: ['fit', 'fit'],
  forget: ['forgot', 'forgotten'],
  freeze: ['froze', 'frozen'],
  get: ['got', 'gotten'],
  give: ['gave', 'given'],
  go: ['went', 'gone'],
  grind: ['ground', 'ground'],
  hang: ['hung', 'hung'],
  have: ['had', 'had'],
  hit: ['hit', 'hit'],
  hold: ['held', 'held'],
  keep: ['kept', 'kept'],
  know: ['knew', 'known'],
  lay: ['laid', 'laid'],
  leave: ['left', 'left'],
  let: ['let', 'let'],
  lose: ['lost', 'lost'],
  make: ['made', 'made'],
  meet: ['met', 'met'],
  miscut: ['miscut', 'miscut'],
  pay: ['paid', 'paid'],
  put: ['put', 'put'],
  quit: ['quit', 'quit'],
  read: ['read', 'read'],
  rebuild: ['rebuilt', 'rebuilt'],
  recut: ['recut', 'recut'],
  redo: ['redid', 'redone'],
  rehang: ['rehung', 'rehung'],
  remake: ['remade', 'remade'],
  reset: ['reset', 'reset'],
  rip: ['ripped', 'ripped'],
  run: ['ran', 'run'],
  say: ['said', 'said'],
  see: ['saw', 'seen'],
  send: ['sent', 'sent'],
  set: ['set', 'set'],
  shut: ['shut', 'shut'],
  sit: ['sat', 'sat'],
  spend: ['spent', 'spent'],
  split: ['split', 'split'],
  spread: ['spread', 'spread'],
  stand: ['stood', 'stood'],
  stick: ['stuck', 'stuck'],
  strike: ['struck', 'struck'],
  swear: ['swore', 'sworn'],
  sweep: ['swept', 'swept'],
  swell: ['swelled', 'swollen'],
  swing: ['swung', 'swung'],
  take: ['took', 'taken'],
  tear: ['tore', 'torn'],
  tell: ['told', 'told'],
  think: ['thought', 'thought'],
  throw: ['threw', 'thrown'],
  undercut: ['undercut', 'undercut'],
  wake: ['woke', 'woken'],
  wear: ['wore', 'worn'],
  weep: ['wept', 'wept'],
  write: ['wrote', 'written'],
  bind: ['bound', 'bound'],
  sweat: ['sweated', 'sweated'],
  saw: ['sawed', 'sawn'],
  sleep: ['slept', 'slept'],
};

// Verbs that double their last letter before -ed and -ing.
const DOUBLES = /^(?:[^aeiou]*[aeiou][bdgklmnprt]|unclog|regrade|recap|reship|unplug|unhook|replan|replug|repin)$/;
const NO_DOUBLE = new Set([
  'clear',
  'seal',
  'repair',
  'open',
  'level',
  'anchor',
  'core',
  'loosen',
  'tighten',
  'fasten',
  'solder',
  'order',
  'cover',
  'butter',
  'remember',
]);

function regular(lemma: string): { s: string; past: string; ing: string } {
  const s = /(?:s|x|z|ch|sh|o)$/.test(lemma)
    ? `${lemma}es`
    : /[^aeiou]y$/.test(lemma)
      ? `${lemma.slice(0, -1)}ies`
      : `${lemma}s`;
  if (lemma.endsWith('e'))
    return {
      s,
      past: `${lemma}d`,
      ing: lemma.endsWith('ee') || lemma.endsWith('ye') ? `${lemma}ing` : `${lemma.slice(0, -1)}ing`,
    };
  if (/[^aeiou]y$/.test(lemma)) return { s, past: `${lemma.slice(0, -1)}ied`, ing: `${lemma}ing` };
  const stem = DOUBLES.test(lemma) && !NO_DOUBLE.has(lemma) ? lemma + lemma.at(-1) : lemma;
  return { s, past: `${stem}ed`, ing: `${stem}ing` };
}

function build(): Map<string, Verb> {
  const table = new Map<string, Verb>();
  const add = (form: string, lemma: string, use: VerbUse, kind: VerbForm) => {
    const known = table.get(form);
    if (known && known.lemma !== lemma) return;
    if (known) (known.forms as Set<VerbForm>).add(kind);
    else table.set(form, { lemma, use, forms: new Set([kind]) });
  };
  for (const [use, list] of Object.entries(USES) as [VerbUse, string][]) {
    for (const lemma of list.split(/\s+/)) {
      const made = regular(lemma);
      const [past, participle] = IRREGULAR[lemma] ?? [made.past, made.past];
      add(lemma, lemma, use, 'base');
      add(made.s, lemma, use, 's');
      add(past, lemma, use, 'past');
      add(participle, lemma, use, 'participle');
      add(made.ing, lemma, use, 'ing');
    }
  }
  return table;
}

const VERBS = build();

/** "Retape", "rerun": done once more. */
function again(word: string): Verb | undefined {
  const once = /^re[a-z]{3,}/.test(word) ? VERBS.get(word.slice(2)) : undefined;
  return once && { ...once, lemma: `re${once.lemma}`, use: once.use === 'buy' ? 'buy' : 'work' };
}

const NOT_PAST =
  /^(?:need|speed|shed|bed|red|seed|weed|feed|reed|indeed|hundred|wed|led|fed|embed|exceed|supposed|tired|kids?bed|united|hundreds?ed|mudbed|ahead|used)$/;

/** A verb that the tables lack, known by its ending: "brazed", "hot-mopped", "ducted". */
function madeUp(word: string): Verb | undefined {
  if (word.length < 5 || !/[a-z]{3}ed$/.test(word) || NOT_PAST.test(word)) return undefined;
  const stem = word.slice(0, -2);
  const lemma =
    /(.)\1$/.test(stem) && !/(?:ss|ll|ff|zz)$/.test(stem)
      ? stem.slice(0, -1)
      : /(?:[^aeiou][uzsvc]|[aeiou][zsvcg]|at|ir|ur|or)$/.test(stem)
        ? `${stem}e`
        : stem;
  return { lemma, use: 'work', forms: new Set<VerbForm>(['past', 'participle']) };
}

/** The verb that a word may be, or undefined. Being also a noun ("paint", "drain") is for the caller to weigh. */
export function verbOf(word: string): Verb | undefined {
  return VERBS.get(word) ?? again(word) ?? madeUp(word);
}

/** Initials of the forms that a word may be: `bp` is a base that is also a past or a participle. */
export const formsOf = (verb: Verb): string =>
  [...verb.forms]
    .map((form) => form[0])
    .sort()
    .join('');
