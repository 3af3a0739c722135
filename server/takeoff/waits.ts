import { addHours } from '../../parser/times/days.ts';
import { remembered } from './reading/remembered.ts';
import type { Said } from './reading/said.ts';
import { saying } from './reading/said.ts';
import type { ComputedWait } from './types.ts';

/** What has to set, cure or dry before a next step, where no label time was said: the safe end of the published range. */
interface Product {
  name: string;
  /** Words that name it. */
  named: RegExp;
  hours: number;
  source: string;
}

/** One kind of work, what it is done with and what waits for it. */
interface Work {
  /** The work is told as done. */
  done: RegExp;
  products: readonly Product[];
  /** The next step is told. */
  next: RegExp;
  /** Verb of the next step. */
  verb: string;
}

const LABELS = 'label range at about 70 F; common practice';

const WORKS: readonly Work[] = [
  {
    done: /\b(?:(?:all )?(?:set|laid|tiled|down|stuck)|thin ?set)\b/,
    products: [
      {
        name: 'rapid thinset',
        named: /\b(?:rapid|fast|quick)[ -]?set\b/,
        hours: 4,
        source: 'ANSI A118.4 rapid-setting, label 2 to 4 h (common practice)',
      },
      {
        name: 'unmodified thinset',
        named: /\b(?:unmodified|dry-?set)\b/,
        hours: 48,
        source: 'dry-set mortar, about 2 days (materials makers, MMSA bulletin 5)',
      },
      {
        name: 'thinset',
        named: /\bthin ?set\b|\bmodified\b|\btile/,
        hours: 24,
        source: 'modified mortar, 24 h at least (materials makers, MMSA bulletin 5)',
      },
    ],
    next: /\bgrout (?:is next|next)\b|\b(?:then|before|to|ready to|can) grout\b|\bgrout (?:this|it|that|tomorrow|the|so)\b|\bso grout\b/,
    verb: 'grout',
  },
  {
    done: /\b(?:grouted|grout is (?:in|done)|grout's (?:in|done))\b/,
    products: [
      { name: 'grout', named: /\bgrout/, hours: 72, source: `grout sealer 48 to 72 h after cement grout; ${LABELS}` },
    ],
    next: /\b(?:seal|sealer|sealing) (?:is )?next\b|\bthen seal\b|\bbefore seal/,
    verb: 'seal',
  },
  {
    done: /\b(?:mud(?:ded)?|coat of mud|taped|skim(?:med)?|joint compound)\b/,
    products: [
      {
        name: 'joint compound',
        named: /\b(?:mud|compound|tape|skim)/,
        hours: 24,
        source: 'drying-type compound, 24 h a coat (drywall guide)',
      },
    ],
    next: /\b(?:sand|sanding|second coat|2nd coat|next coat) (?:is )?next\b|\bthen sand\b|\bready to sand\b/,
    verb: 'sand',
  },
  {
    done: /\bprim(?:ed|er is on|er's on)\b/,
    products: [{ name: 'primer', named: /\bprim/, hours: 4, source: `latex primer, recoat 2 to 4 h; ${LABELS}` }],
    next: /\b(?:paint|painting|first coat) (?:is )?next\b|\bthen paint\b/,
    verb: 'paint',
  },
  {
    done: /\b(?:silicone[d]?|bead of silicone)\b/,
    products: [
      { name: 'silicone', named: /\bsilicone/, hours: 24, source: 'silicone, water after 24 h (sealant how-to)' },
    ],
    next: /\b(?:use|water on|run|fill) (?:the )?(?:shower|tub|sink)\b|\bshower is next\b/,
    verb: 'use',
  },
  {
    done: /\b(?:poured|pour is done|concrete is (?:in|down))\b/,
    products: [
      {
        name: 'concrete',
        named: /\b(?:concrete|slab|pour|footing|patio|pad)/,
        hours: 72,
        source: 'concrete, moist cure 3 days at least (UFGS guide specification)',
      },
    ],
    next: /\b(?:strip|pull|take) (?:the )?forms (?:is |are )?next\b|\bframing is next\b|\bposts? (?:is|are) next\b/,
    verb: 'strip forms of',
  },
];

const LABEL_TIME = saying('\\b(?:says?|label|bag|tub|can|wants?|needs?|gotta|has to)\\b[^.{]{0,24}<T>|<T> before');
const LAST_AT = saying('\\b(?:last (?:tile|one|piece|board|coat)|finished|done|set) at <N>');
const CORRECTS = /\b(?:wrong (?:bag|tub|can|one)|that was the|it was the|not the)\b/;
const SURFACE = /\b(?:floor|walls?|shower|backsplash|ceiling|tub|patio|slab|pad|counter)\b/;
const HOURS: Readonly<Record<string, number>> = { hr: 1, day: 24, week: 168, min: 1 / 60 };

interface Laid {
  work: Work;
  product: Product;
  hours: number | null;
  from: string;
  surface: string;
  next: boolean;
  noteId: string;
}

/** Words without which no wait begins, ends or changes. */
const speaks = remembered(
  (words) =>
    WORKS.some((work) => work.done.test(words) || work.next.test(words)) ||
    CORRECTS.test(words) ||
    LABEL_TIME.test(words),
);

/** Next steps that the notes name and that something must set for: from the label time said, else the published range. */
export function waitsIn(notes: readonly Said[]): ComputedWait[] {
  const laid = new Map<string, Laid>();
  for (const said of notes) {
    for (const work of speaks(said.words) ? WORKS : []) {
      const key = `${work.verb}/${said.area ?? ''}`;
      const known = laid.get(key);
      const product = work.products.find((p) => p.named.test(said.words));
      const hours = labelHours(said);
      if (known && (CORRECTS.test(said.words) || hours !== null) && (product || hours !== null)) {
        known.product = product ?? known.product;
        known.hours = hours ?? (product ? null : known.hours);
        known.next ||= work.next.test(said.words);
        known.noteId = said.noteId;
      } else if (work.done.test(said.words) && product) {
        laid.set(key, {
          work,
          product,
          hours,
          from: startOf(said),
          surface: surfaceOf(said),
          next: work.next.test(said.words),
          noteId: said.noteId,
        });
        if (large(said) && product.name === 'thinset')
          laid.get(key)!.product = {
            ...product,
            hours: 72,
            source: 'under large dense tile 48 to 72 h (trade habit; common practice, no source)',
          };
      } else if (known) known.next ||= work.next.test(said.words);
    }
  }
  return [...laid.entries()].flatMap(([key, l]) => {
    const area = key.slice(l.work.verb.length + 1) || null;
    if (!l.next) return [];
    const hours = l.hours ?? l.product.hours;
    return [
      {
        task: `${l.work.verb} the ${[area, l.surface].filter(Boolean).join(' ')}`.trim(),
        area,
        readyOn: addHours(l.from, hours).slice(0, 10),
        waitingFor: `${l.product.name}, ${hours} h`,
        source: l.hours ? 'label time, as said' : l.product.source,
        noteId: l.noteId,
      },
    ];
  });
}

function labelHours(said: Said): number | null {
  const match = LABEL_TIME.exec(said.words);
  const figure = match && said.figures[Number(match[1] ?? match[2])];
  return figure ? figure.value.valueOf() * (HOURS[figure.unit ?? ''] ?? 0) || null : null;
}

/** When it was done: "last tile at 11", else when it was told. */
function startOf(said: Said): string {
  const match = LAST_AT.exec(said.words);
  const hour = match && said.figures[Number(match[1])]!.value.valueOf();
  if (!hour || hour > 12 || !Number.isInteger(hour)) return said.saidAt;
  const told = Number(said.saidAt.slice(11, 13));
  const at = hour < 7 || (hour + 12 <= told && hour !== 12) ? hour + 12 : hour;
  return `${said.saidAt.slice(0, 11)}${String(at % 24).padStart(2, '0')}:00`;
}

const surfaceOf = (said: Said): string => SURFACE.exec(said.words)?.[0] ?? '';

/** A tile with an edge of 15 in or more, the trade's large tile (ANSI A108.02). */
const large = (said: Said): boolean =>
  said.figures.some(
    (f) => (f.unit === null || f.unit === 'in') && f.value.compare(15) >= 0 && f.value.compare(60) <= 0,
  ) && /\b(?:porcelain|tile|stone|slab)\b/.test(said.words);
