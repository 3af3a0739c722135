import type { Item } from './types.ts';

/** Still on the list: open, or waiting for something. Not what is closed, nor what is kept apart as not sure. */
export const isLive = ({ state }: Pick<Item, 'state'>): boolean => state === 'open' || state === 'waiting';
