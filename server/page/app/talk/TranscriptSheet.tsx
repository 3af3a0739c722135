import { useState } from 'preact/hooks';
import type { JobView } from '../../../http/api.ts';
import { wallTime } from '../kit/clock.ts';
import { useModal } from '../kit/hooks.ts';
import { sendNote } from '../kit/notes.ts';
import { SheetButtons } from '../kit/SheetButtons.tsx';
import { isTimed } from './transcripts.ts';

/** Words written down elsewhere, about to be read as a note. */
export interface Written {
  text: string;
  /** The file's name, or null for words pasted into the box. */
  name: string | null;
  /** When the file was last written, as a clock counts; null for pasted words. */
  writtenAt: number | null;
}

/** Asks when it was said, since "tomorrow" hangs on it, then sends it like any note. */
export function TranscriptSheet({
  written,
  view,
  onSent,
  onClose,
}: {
  written: Written;
  view: JobView;
  onSent: () => void;
  onClose: () => void;
}) {
  const dialog = useModal();
  const { zone } = view.job;
  const [now] = useState(() => wallTime(zone));
  const last = written.writtenAt ? wallTime(zone, new Date(written.writtenAt)) : now;
  // A file's clock may be ahead of this one.
  const guess = [last, now].sort()[0]!;
  const lines = written.text.split('\n').filter((line) => line.trim()).length;
  const send = async (form: FormData) => {
    const said = String(form.get('saidAt'));
    dialog.current?.close();
    onSent();
    const saidAt = said.length === 16 ? `${said}:00` : said;
    await sendNote(written.text, { saidAt, ...(isTimed(written.text) && { area: null }) });
  };
  return (
    <dialog ref={dialog} class="sheet" aria-labelledby="written-title" onClose={onClose}>
      <form
        onSubmit={(e) => {
          e.preventDefault();
          void send(new FormData(e.currentTarget));
        }}
      >
        <h2 id="written-title">{isTimed(written.text) ? 'Recorded talk' : 'Written talk'}</h2>
        <p>
          {written.name ?? 'Pasted'}: {lines} lines.{' '}
          {isTimed(written.text)
            ? 'Each thing found keeps its place in the recording.'
            : 'It holds no times, so it is read as one long note.'}
        </p>
        <pre class="quote">{written.text.slice(0, 400)}</pre>
        <label>
          When it was said
          <input
            type="datetime-local"
            name="saidAt"
            required
            max={now.slice(0, 16)}
            defaultValue={guess.slice(0, 16)}
          />
        </label>
        <SheetButtons does="Read it" dialog={dialog} />
      </form>
    </dialog>
  );
}
