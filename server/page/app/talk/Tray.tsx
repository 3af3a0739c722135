import type { Taken } from '../kit/phoneStore.ts';
import { takeOut } from '../kit/tray.ts';
import { useSource } from './Enclosures.tsx';

/** What goes with the next note: seen and heard before it is sent, and each taken out again by a tap. */
export function Tray({ taken }: { taken: readonly Taken[] }) {
  const photos = taken.filter((one) => one.kind === 'photo');
  return (
    <>
      {photos.length > 0 && (
        <ul class="tray" aria-label="Photos that go with the note">
          {photos.map((photo, k) => (
            <li key={photo.id}>
              <button type="button" onClick={() => void takeOut(photo)}>
                <Small photo={photo} />
                Take out<span class="hidden"> photo {k + 1}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      {taken
        .filter((one) => one.kind === 'recording')
        .map((recording) => (
          <Recorded key={recording.id} recording={recording} />
        ))}
    </>
  );
}

function Small({ photo }: { photo: Taken }) {
  return <img src={useSource({ path: '', here: photo.data })} alt="" />;
}

function Recorded({ recording }: { recording: Taken }) {
  const src = useSource({ path: '', here: recording.data });
  return (
    <div class="recorded">
      {/* biome-ignore lint/a11y/useMediaCaption: what was said into it a moment ago */}
      <audio controls preload="metadata" src={src} />
      <button type="button" class="plain" onClick={() => void takeOut(recording)}>
        Drop it
      </button>
    </div>
  );
}
