import { type Goods, sameGoods } from './goods.ts';
import { goodsNamed, goodsWanted, type NoteTold, noteTold } from './noteTold.ts';
import { ownTerms } from './ownTerms.ts';
import { pairsIn } from './pairs.ts';
import { adds, leftOut, restates } from './restated.ts';
import type { Said } from './said.ts';
import { spentIn } from './stock.ts';
import type { Terms } from './terms.ts';
import { ASKS, isDone, onlyForOthers, sentenceAt, wants } from './wanted.ts';
import { newWork, update, type Work } from './work.ts';

/** Notes in order, gathered by goods and area; a size said again for the same place replaces the earlier one. */
export function worksOf(notes: readonly Said[]): Work[] {
  const works: Work[] = [];
  // With nothing under way, a note that wants no goods tells nothing: its figures need not be read.
  for (const said of notes) if (works.length > 0 || goodsWanted(said).length > 0) meet(works, said);
  return works;
}

function meet(works: Work[], said: Said): void {
  const goods = goodsNamed(said);
  // "Also do the furnace room, same height": of what was spoken of last.
  const goesOn = said.area === null || (goods.length === 0 && adds(said.words));
  const standing = works.findLast((w) => w.area === said.area) ?? (goesOn ? works.at(-1) : undefined);
  const wanted = goodsWanted(said);
  const spent = spentIn(said);
  const from =
    spent &&
    works.findLast((w) => w.stock.some((s) => s.unit === spent.unit) && goods.some((g) => sameGoods(w.goods, g)));
  if (spent && from) {
    from.stock.push(spent);
    from.noteIds.push(said.noteId);
    return;
  }
  const note = noteTold(said, works, standing?.goods.by);
  const { terms, stock } = note;
  if (!note.told && skipPlaces(works, said, goods)) return;
  if (stock.length > 0 && !note.told) {
    const owner = ownerOf(works, said, goods);
    if (!owner) return;
    owner.stock.push(...stock);
    owner.noteIds.push(said.noteId);
    return;
  }
  const wantedGoods = goods.filter((g) => wanted.includes(g) || works.some((w) => stands(w, g, said)));
  if (wantedGoods.length === 0) {
    const told =
      note.told || terms.waste || terms.ratios.length > 0 || note.extentFor('area').height || terms.coats.length > 0;
    // Goods that were laid or used tell nothing of what is still to buy.
    if (standing && told && goods.length === 0 && !isDone(said.words) && !(note.told && isOfAnother(said)))
      update(standing, said, note, terms, standing.goods);
    return;
  }
  const someOwn =
    goods.length > 1 &&
    goods.some((g, k) => !WITH_OTHERS.test(g.item) && ownTerms(said, terms, goods, k).ratios.length > 0);
  for (const one of wantedGoods) {
    const index = goods.indexOf(one);
    const own = goods.length > 1 ? ownTerms(said, terms, goods, index) : terms;
    const work = works.find((w) => stands(w, one, said));
    if (work) update(work, said, note, own, one);
    else if (starts(said, note, one, index, own, someOwn)) {
      const fresh = newWork(said, one, works, goods);
      update(fresh, said, note, own, one);
      works.push(fresh);
    }
  }
  const first = works.find((w) => stands(w, wantedGoods[0]!, said));
  if (stock.length > 0) (first ?? works.at(-1))?.stock.push(...stock);
  const apart = standing && !goods.some((g) => sameGoods(g, standing.goods));
  if (apart && note.told && terms.ratios.length === 0 && restates(said.words))
    update(standing, said, note, terms, standing.goods);
}

/** A place that is left out of what stands; true where there was one. */
function skipPlaces(works: readonly Work[], said: Said, goods: readonly Goods[]): boolean {
  let met = false;
  for (const work of works) {
    const fewer =
      work.extent &&
      (goods.every((g) => !works.some((w) => sameGoods(w.goods, g))) || goods.some((g) => sameGoods(work.goods, g)))
        ? leftOut(work.extent, said.words)
        : null;
    if (!fewer) continue;
    Object.assign(work, { extent: fewer, noteIds: [...work.noteIds, said.noteId] });
    met = true;
  }
  return met;
}

const stands = (work: Work, goods: Goods, said: Said) =>
  sameGoods(work.goods, goods) && (work.area === said.area || said.area === null);

/** Sizes of a thing that is no place: a door hung, a counter to be made. */
const isOfAnother = ({ words, terms }: Said): boolean =>
  !restates(words) && !adds(words) && terms.some(({ term }) => ['part', 'material', 'fixture'].includes(term.kind));

/** Small goods that go with others and are ordered where they are named. */
const WITH_OTHERS = /screw|tape|compound|grout|thinset|adhesive|mortar|primer|caulk|sealant|silicone/;

/** A note starts a take-off where it says how goods are sold, wasted or coated, or asks for them by a size. */
function starts({ words }: Said, note: NoteTold, goods: Goods, index: number, own: Terms, someOwn: boolean): boolean {
  const sentences = goods.mentions.map((at) => sentenceAt(words, at));
  const asked = sentences.some((s) => ASKS.test(s)) || (index === 0 && ASKS.test(words));
  const wanted = sentences.some(wants);
  if (own.ratios.length > 0 || own.coats.length > 0) return true;
  if (
    own.waste === null &&
    own.packSize === null &&
    !WITH_OTHERS.test(goods.item) &&
    onlyForOthers(words, goods.mentions)
  )
    return false;
  if (index === 0 && own.byMeasure !== null && note.told) return true;
  if (asked && note.told) return true;
  // What is left over at the ends is told only of what is to be bought.
  if (index === 0 && note.told && note.extentFor(goods.by).makeUp.length > 0) return true;
  if (wanted && (note.told || own.waste !== null)) return true;
  if (index > 0) return WITH_OTHERS.test(goods.item) && wanted;
  return !someOwn && (own.waste !== null || own.packSize !== null);
}

/** Goods that a note of stock speaks of: by name, by size, or "the same". */
function ownerOf(works: readonly Work[], said: Said, goods: readonly Goods[]): Work | undefined {
  const named = works.findLast((w) => goods.some((g) => sameGoods(w.goods, g)));
  const sized = works.findLast(
    (w) => w.goods.size !== null && pairsIn(said).some((pair) => pair.lumber || pair.size === w.goods.size),
  );
  const meant = goods.length === 0 && /\b(?:same|that|those|it|them)\b/.test(said.words);
  return named ?? sized ?? (meant ? works.at(-1) : undefined);
}
