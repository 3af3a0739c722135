import { mkdir, open, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

export type EnclosureKind = 'recordings' | 'photos';

/** A recording or a photo as it was sent. */
export interface Enclosure {
  type: string;
  bytes: Buffer;
}

/** What each kind may be, by its media type and first bytes; a drawing in SVG is no photo, since it can hold a program. */
const TYPES: Readonly<Record<EnclosureKind, RegExp>> = {
  recordings: /^(?:audio|video)\/(?:webm|mp4|ogg|mpeg|aac|wav|x-m4a)\b/,
  photos: /^image\/(?:jpeg|png)\b/,
};

export const takes = (kind: EnclosureKind, type: string): boolean => TYPES[kind].test(type);

/** Keeps sound and pictures as files in a folder of their own: written whole, flushed, then named; never overwritten. */
export class Enclosures {
  readonly #folder: string;

  constructor(folder: string) {
    this.#folder = folder;
  }

  /** @returns false where that id is kept already: the first stands. */
  async put(jobId: string, kind: EnclosureKind, id: string, sent: Enclosure): Promise<boolean> {
    if (await this.get(jobId, kind, id)) return false;
    const folder = join(this.#folder, jobId, kind);
    await mkdir(folder, { recursive: true });
    const part = join(folder, `${id}.part`);
    const file = await open(part, 'w');
    try {
      await file.writeFile(sent.bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await writeFile(join(folder, `${id}.type`), sent.type);
    await rename(part, join(folder, id));
    return true;
  }

  async get(jobId: string, kind: EnclosureKind, id: string): Promise<Enclosure | null> {
    const path = join(this.#folder, jobId, kind, id);
    try {
      return { bytes: await readFile(path), type: await readFile(`${path}.type`, 'utf8') };
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
      throw error;
    }
  }
}
