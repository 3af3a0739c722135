import { type Chunk, isNounTerm } from '../chunks.ts';
import { isSmall } from '../words.ts';

/** Containers that a stated measure is the size of: "a 4 litre tin", "two 50 pound bags". */
export const CONTAINER =
  /^(bag|sack|tin|can|tub|bucket|pail|tube|box|carton|roll|coil|spool|bottle|jug|drum|cartridge|sausage|pack|jar|kit|piece|stick|length)s?$/;
/** What goods come in that is told by its sides: "a 4x8 sheet of melamine". */
export const FLAT = /^(?:sheet|panel|board|slab|piece|pane|mat)s?$/;
/** What a figure is told to be, in what is said behind goods: "thirty inch wide by thirty high". */
export const SIDE = /^(?:wide|tall|high|deep|long|thick|across|drop)$/;
/** Packs that the reading of quantities does not count by. */
export const PACKED_WORD = /^(?:set|kit|batch|load|sausage|strip|sleeve|flat)s?$/;
/** Heads that stand for a name told elsewhere: "a twenty inch one", "the ninety minute stuff". */
export const STANDS_IN =
  /^(?:ones?|kind|type|stuff|model|size|version|style|footers?|foot|inch|each|variety|pieces?|pcs?|pc|spares?|extras?)$/;
export const NOT_GOODS =
  /^(?:guys?|people|men|women|times?|trips?|hours?|days?|weeks?|coats?|more|others?|left|things?|kids?|rooms?|spots?|places?|ways?|sides?|feet|total|percent|years?|drops?|cycles?|passes|layers?|units?|ends?|corners?|back|please|thanks|thank|gone|good|bad|bit|lot|few|couple|minute|hour|day|week|while|call|look|hand|job|little|number|rest|half|most|deal|chance|problem|mess|way|quick|real|pain|ta|cheers|later|today|same|shy|last|next|short|say|remain|remaining|altogether|apiece|bigger|smaller|thing|ok|okay|waste|wastage|instead|though|tho)$/;
/** Parts of a building that are counted and measured, and that nobody buys. */
export const NOT_BOUGHT = /\b(?:wall|ceiling|bay|opening|doorway|(?<!air )gap|hole|room|stairwell)$/;

/** A word that can name goods: a trade noun, or one that the vocabulary lacks. */
export const isName = (c: Chunk) =>
  (isNounTerm(c) && !/^(?:role|area)$/.test(c.term!.kind)) ||
  (c.kind === 'word' &&
    /^[a-zñáéíóú][a-zñáéíóú0-9'-]+$/.test(c.word) &&
    !isSmall(c.word) &&
    !NOT_GOODS.test(c.word) &&
    !isDone(c)) ||
  (c.kind === 'term' && c.term!.kind === 'work');

/** A bare participle: "6 swapped" names no goods. */
export const isDone = (c: Chunk) =>
  c.verb !== undefined && !c.verb.forms.has('base') && !c.verb.forms.has('s') && !isNounTerm(c);

/** Money, which counts no goods. */
export const MONEY = /^(?:bucks?|dollars?|euros?|quid|cents?|grand)$/;
