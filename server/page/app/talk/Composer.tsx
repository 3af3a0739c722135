import { useRef, useState } from 'preact/hooks';
import type { JobView } from '../../../http/api.ts';
import { useShown } from '../kit/hooks.ts';
import { say, sendNote, settle, unheardText } from '../kit/model.ts';
import { canListen, listen } from './liveWords.ts';
import { resized } from './photos.ts';
import { canRecord, type Recorder, record } from './recorder.ts';

/**
 * The box to talk into. It is never written to while it is used: a phone keyboard that dictates appends its partial
 * words again after every write. It is read when Send is tapped, and emptied then.
 */
export function Composer({ view }: { view: JobView }) {
  const { settings } = useShown();
  const box = useRef<HTMLTextAreaElement>(null);
  const [photos, setPhotos] = useState<Blob[]>([]);
  const [recorder, setRecorder] = useState<Recorder | null>(null);
  const [heard, setHeard] = useState<{ words: string; stop: () => void } | null>(null);

  const send = async () => {
    heard?.stop();
    const text = [box.current!.value.trim(), heard?.words.trim()].filter(Boolean).join(' ');
    const sound = recorder ? await recorder.stop() : null;
    if (!text && !photos.length && !sound) {
      say('Nothing said yet.');
      box.current!.focus();
      return;
    }
    box.current!.value = '';
    setPhotos([]);
    setRecorder(null);
    setHeard(null);
    void settle({ draft: '' });
    await sendNote(text || (sound ? unheardText : 'Photo.'), photos, sound);
  };

  const addPhotos = async (input: HTMLInputElement) => {
    const files = [...(input.files ?? [])];
    input.value = '';
    const kept = await Promise.all(files.map(resized));
    setPhotos((before) => [...before, ...kept.filter((p) => p !== null)]);
    if (kept.includes(null)) say('That file is no picture that this phone can open.');
  };

  const startRecording = async () => {
    try {
      setRecorder(await record(view.job.id));
      say('Recording. Send keeps it with the note.');
    } catch {
      say('The microphone was not given. Type, or use the keyboard’s own dictation.');
    }
  };

  return (
    <form
      class="composer"
      onSubmit={(e) => {
        e.preventDefault();
        void send();
      }}
    >
      <div class="extras">
        <label class="area-pick">
          <span class="hidden">Area of the next note</span>
          <select value={settings.area} onChange={(e) => void settle({ area: e.currentTarget.value })}>
            <option value="">Any area</option>
            {view.job.areas.map((area) => (
              <option key={area}>{area}</option>
            ))}
          </select>
        </label>
        <label class="plain file">
          Photo{photos.length > 0 && ` (${photos.length})`}
          <input type="file" accept="image/jpeg,image/png" multiple onChange={(e) => void addPhotos(e.currentTarget)} />
        </label>
        {canRecord() && (
          <button
            type="button"
            class={recorder ? 'plain recording' : 'plain'}
            aria-pressed={recorder !== null}
            onClick={() => (recorder ? void send() : void startRecording())}
          >
            {recorder ? 'Stop and send' : 'Record'}
          </button>
        )}
        {settings.liveWords && canListen() && (
          <button
            type="button"
            class="plain"
            aria-pressed={heard !== null}
            onClick={() => {
              heard?.stop();
              if (heard) void send();
              else setHeard({ words: '', stop: listen((words) => setHeard((h) => h && { ...h, words })) });
            }}
          >
            {heard ? 'Stop and send' : 'Listen'}
          </button>
        )}
      </div>
      {heard && <p class="heard">{heard.words || 'Listening…'}</p>}
      <div class="say">
        <label class="hidden" for="words">
          What happened
        </label>
        <textarea
          id="words"
          ref={box}
          rows={2}
          defaultValue={settings.draft}
          placeholder="What happened?"
          autocapitalize="sentences"
          enterkeyhint="send"
          onBlur={(e) => void settle({ draft: e.currentTarget.value })}
          onKeyDown={(e) => {
            if (e.key !== 'Enter' || e.shiftKey || e.isComposing) return;
            e.preventDefault();
            void send();
          }}
        />
        <button type="submit" class="primary">
          Send
        </button>
      </div>
    </form>
  );
}
