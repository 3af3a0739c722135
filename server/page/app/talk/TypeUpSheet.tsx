import { useRef, useState } from 'preact/hooks';
import type { JobView } from '../../../http/api.ts';
import { recordingPath } from '../kit/calls.ts';
import { clockOf, dayWords } from '../kit/clock.ts';
import { useModal, useShown } from '../kit/hooks.ts';
import { settle } from '../kit/model.ts';
import { sendNote } from '../kit/notes.ts';
import type { ShownTalk } from '../kit/pending.ts';
import { SheetButtons } from '../kit/SheetButtons.tsx';
import { useSource } from './Enclosures.tsx';

/** Seconds that a typist goes back to hear a word again. */
const backBy = 5;
const slow = 0.7;

/** A recording that waits: heard piece by piece, its words typed under it. They become a note of the moment at which they were spoken. */
export function TypeUpSheet({ slip, view, onClose }: { slip: ShownTalk; view: JobView; onClose: () => void }) {
  const dialog = useModal();
  const { parcels, settings } = useShown();
  const sound = useRef<HTMLAudioElement>(null);
  const [playing, setPlaying] = useState(false);
  const [slowly, setSlowly] = useState(false);
  const [silent, setSilent] = useState(false);
  const parcel = parcels.find((p) => p.id === slip.recordingId);
  const src = useSource({
    path: recordingPath(view.job.id, slip.recordingId!),
    here: parcel && 'data' in parcel ? parcel.data : null,
  });

  const toggle = () => {
    if (sound.current!.paused) void sound.current!.play().catch(() => setSilent(true));
    else sound.current!.pause();
  };
  const back = () => {
    sound.current!.currentTime = Math.max(0, sound.current!.currentTime - backBy);
  };
  const setSpeed = (slower: boolean) => {
    sound.current!.playbackRate = slower ? slow : 1;
    setSlowly(slower);
  };
  const kept = settings.typing[slip.id] ?? '';
  const keepTyping = (words: string) => {
    const { [slip.id]: _, ...others } = settings.typing;
    void settle({ typing: words ? { ...others, [slip.id]: words } : others });
  };
  const send = (words: string) => {
    if (!words) return;
    keepTyping('');
    dialog.current?.close();
    void sendNote(words, { recordingId: slip.recordingId, saidAt: slip.saidAt, by: slip.by, area: slip.area ?? null });
  };
  return (
    <dialog ref={dialog} class="sheet" aria-labelledby="type-up-title" onClose={onClose}>
      <form
        class="type-up"
        onSubmit={(e) => {
          e.preventDefault();
          send(String(new FormData(e.currentTarget).get('words')).trim());
        }}
        onKeyDown={(e) => {
          if (e.key !== 'F2' && e.key !== 'F4') return;
          e.preventDefault();
          if (e.key === 'F2') toggle();
          else back();
        }}
      >
        <h2 id="type-up-title">Type what it says</h2>
        <p>
          {['Said', dayWords(slip.saidAt, view.today), 'at', clockOf(slip.saidAt), slip.by && `by ${slip.by}`]
            .filter(Boolean)
            .join(' ')}
          . The words count from then.
        </p>
        {/* biome-ignore lint/a11y/useMediaCaption: its words are what is being typed */}
        <audio
          ref={sound}
          controls
          preload="auto"
          src={src}
          onPlay={() => setPlaying(true)}
          onPause={() => setPlaying(false)}
          onError={() => setSilent(true)}
        />
        {silent && <p class="not-sent">The sound is with the server and plays where there is signal.</p>}
        <div class="row play">
          <button type="button" class="primary" onClick={toggle}>
            {playing ? 'Stop' : 'Play'}
          </button>
          <button type="button" class="plain" onClick={back}>
            Back {backBy} s
          </button>
          <button type="button" class="plain" aria-pressed={slowly} onClick={() => setSpeed(!slowly)}>
            {slowly ? 'As spoken' : 'Slower'}
          </button>
        </div>
        <label>
          What it says
          <textarea
            name="words"
            rows={5}
            required
            defaultValue={kept}
            autocapitalize="sentences"
            onBlur={(e) => keepTyping(e.currentTarget.value)}
          />
        </label>
        <p class="keys">On a keyboard F2 plays and stops, F4 goes back {backBy} seconds.</p>
        <SheetButtons does="Send" leaves="Later" dialog={dialog} />
      </form>
    </dialog>
  );
}
