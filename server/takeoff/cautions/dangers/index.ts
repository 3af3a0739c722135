import { AIR } from './air.ts';
import { ELECTRIC_DANGERS } from './electric.ts';
import { HOUSE } from './house.ts';
import type { Danger } from './words.ts';

export type { Danger };

export const DANGERS: readonly Danger[] = [...ELECTRIC_DANGERS, ...AIR, ...HOUSE];
