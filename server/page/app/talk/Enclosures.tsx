import { useEffect, useState } from 'preact/hooks';
import { photoPath, recordingPath } from '../kit/calls.ts';
import type { Parcel } from '../kit/phoneStore.ts';

interface Props {
  jobId: string;
  photoIds: readonly string[];
  recordingId: string | null;
  /** What waits on this phone: a picture or a sound among it is shown from here and not from the server. */
  parcels: readonly Parcel[];
}

/** Pictures and sound that came with a note. */
export function Enclosures({ jobId, photoIds, recordingId, parcels }: Props) {
  const here = (id: string) => {
    const parcel = parcels.find((p) => p.id === id);
    return parcel && 'data' in parcel ? parcel.data : null;
  };
  return (
    <>
      {photoIds.length > 0 && (
        <div class="photos">
          {photoIds.map((id) => (
            <Picture key={id} path={photoPath(jobId, id)} here={here(id)} />
          ))}
        </div>
      )}
      {recordingId && <Sound path={recordingPath(jobId, recordingId)} here={here(recordingId)} />}
    </>
  );
}

type Source = { path: string; here: Blob | null };

function Picture(source: Source) {
  const src = useSource(source);
  return (
    <a class="photo" href={src} target="_blank" rel="noopener">
      <img src={src} alt="Taken with this note" loading="lazy" />
    </a>
  );
}

function Sound(source: Source) {
  // biome-ignore lint/a11y/useMediaCaption: the note's words stand beside the sound
  return <audio controls preload="none" src={useSource(source)} />;
}

/** Where to load from; a blob's address is given back when it is no longer shown. */
export function useSource({ path, here }: Source): string | undefined {
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    if (!here) return;
    const made = URL.createObjectURL(here);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [here === null]);
  return here ? address : path;
}
