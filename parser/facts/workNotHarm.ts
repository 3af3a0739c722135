import type { Chunk } from './chunks.ts';

/** Words that tell of harm of most things and of work on some: by common practice, no source. */
const WORK_ON: ReadonlyMap<string, RegExp> = new Map(
  Object.entries({
    stripped:
      /^(?:walls?|forms?|roof|roofs|paint|wallpaper|paper|floors?|deck|siding|rooms?|bath|bathroom|kitchen|ceilings?)$/,
    blown: /^(?:attic|attics|insulation|cellulose|foam|ceilings?|walls?|bays?|texture)$/,
    racked: /^(?:panels?|doors?|drawers?|fronts?|cabinets?|drawer fronts?|modules?)$/,
    exposed: /^(?:lateral|sewer lateral|line|lines|pipe|pipes|footings?|foundation|tank|joists|rebar)$/,
    broke: /^(?:forms?|ground|slab|concrete)$/,
    broken: /^(?:forms?|ground)$/,
    snapped: /^(?:lines?|center line|chalk line|chalk lines?)$/,
    rocked: /./,
    floated: /./,
    notched: /^(?:studs?|plates?|post|posts)$/,
    cut: /./,
    buried: /^(?:conduit|drain|pipe|line|downspouts?|tank|cable)$/,
    burned: /^(?:disc|disk|copy)$/,
  }),
);

/** "Walls stripped", "attic blown to fifteen", "broke forms": work, though the words are a flaw's elsewhere. */
export function isWorkOn(chunks: readonly Chunk[], k: number): boolean {
  // "Ripped out the old vanity", "tore the deck off".
  if (
    /^(?:ripped|tore|torn|broke|busted|stripped|kicked|knocked)(?: (?:out|up|off|down))?$/.test(chunks[k]!.word) &&
    k <= 1
  ) {
    const [next, then] = [chunks[k + 1]?.word ?? '', chunks[k + 2]?.word ?? ''];
    const off = / /.test(chunks[k]!.word) || /^(?:out|up|off|down)$/.test(next);
    if (
      off &&
      /^(?:the|all|that|old|two|his|her|their|it|them|everything)$/.test(/ /.test(chunks[k]!.word) ? next : then)
    )
      return true;
  }
  const on = WORK_ON.get(chunks[k]!.word);
  if (!on) return false;
  const near = [...chunks.slice(Math.max(0, k - 4), k), ...chunks.slice(k + 1, k + 4)];
  return near.some((c) => c.kind !== 'quantity' && on.test(c.word.replace(/'s$/, '')));
}
