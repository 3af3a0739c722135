import { useSource } from './Enclosures.tsx';

/** A picture that goes with the next note. */
export interface Taken {
  id: string;
  data: Blob;
}

/** The pictures that go with the next note: seen before they are sent, and each taken out again by a tap. */
export function PhotoTray({ photos, onOut }: { photos: readonly Taken[]; onOut: (photo: Taken) => void }) {
  if (!photos.length) return null;
  return (
    <ul class="tray" aria-label="Photos that go with the note">
      {photos.map((photo, k) => (
        <li key={photo.id}>
          <button type="button" onClick={() => onOut(photo)}>
            <Small data={photo.data} />
            Take out<span class="hidden"> photo {k + 1}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function Small({ data }: { data: Blob }) {
  return <img src={useSource({ path: '', here: data })} alt="" />;
}
