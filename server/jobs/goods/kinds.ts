/** Words that stand where goods' name should be, and only tell how they come or of what kind they are. */

const PACKS =
  /^(?:can|piece|roll|tube|box|bag|bundle|sheet|stick|length|case|pack|pail|bucket|gallon|tub|pc|one|carton|spool|coil|crate)$/;

/** A pack's own word where goods' name should be: "two pieces", "a can and a half". */
export const isPackWord = (item: string) => PACKS.test(item);

const BARE =
  /^(?:(?:more|ones?|ml|altogether|come|comes|white|wht|black|gr[ae]y|brown|bronze|brass|chrome|nickel|satin|gloss|clear|round|square|oval|flat|plain|cast|steel|single|double|two|three|left|right|hand|gang|small|large|big|long|short|same|kind|type|new|itself|slate|oak|pine)(?: |-|$))+$/;

/** What kind goods are to be, and not what they are: "one black", "two-gang white". */
export const isBare = (item: string) => BARE.test(item.toLowerCase());

/** A kind that goods are asked for by, with no other name: "a quart of the grey", "four of the brown ones". */
export const isColour = (item: string) =>
  /\b(?:white|wht|black|gr[ae]y|brown|bronze|brass|chrome|nickel|clear|slate|oak|pine)\b/i.test(item);
