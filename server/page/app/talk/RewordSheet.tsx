import { useModal } from '../kit/hooks.ts';
import { reword } from '../kit/notes.ts';
import type { ShownTalk } from '../kit/pending.ts';
import { SheetButtons } from '../kit/SheetButtons.tsx';

/** Other words, or another area, for a note that waits on this phone. */
export function RewordSheet({
  waits,
  areas,
  onClose,
}: {
  waits: NonNullable<ShownTalk['unsent']>;
  areas: readonly string[];
  onClose: () => void;
}) {
  const dialog = useModal();
  const keep = (form: FormData) => {
    const text = String(form.get('words')).trim();
    const area = String(form.get('area')) || null;
    const same = text === waits.note.text && area === (waits.note.area ?? null);
    if (text && !same) void reword(waits, { text, area });
    dialog.current?.close();
  };
  return (
    <dialog ref={dialog} class="sheet" aria-labelledby="reword-title" onClose={onClose}>
      <form
        onSubmit={(e) => {
          e.preventDefault();
          keep(new FormData(e.currentTarget));
        }}
      >
        <h2 id="reword-title">Change words</h2>
        <p>It goes out as you leave it here, with the time at which it was said.</p>
        <label>
          What happened
          <textarea name="words" rows={6} required defaultValue={waits.note.text} autocapitalize="sentences" />
        </label>
        <label>
          Area
          <select name="area">
            <option value="">None chosen</option>
            {[...new Set([...areas, ...(waits.note.area ? [waits.note.area] : [])])].map((area) => (
              <option key={area} selected={area === waits.note.area}>
                {area}
              </option>
            ))}
          </select>
        </label>
        <SheetButtons does="Keep" dialog={dialog} />
      </form>
    </dialog>
  );
}
