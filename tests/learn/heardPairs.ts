import { readdirSync, readFileSync } from 'node:fs';

const FOLDER = new URL('../../fixtures/hearing/', import.meta.url);

/** A phrase in which a name of the trade was misheard. */
export interface HeardPair {
  text: string;
  heard: string;
  meant: string;
}

/** The phrases that may be looked at and learned from: those kept `sealed` or `unseen` never are. */
export const heardPairs = (): HeardPair[] =>
  readdirSync(FOLDER)
    .filter((file) => /^(?:seen|fresh|opened.*)\.jsonl$/.test(file))
    .flatMap((file) => readFileSync(new URL(file, FOLDER), 'utf8').trim().split('\n'))
    .map((line) => JSON.parse(line) as HeardPair);
