/** Words as they stand, for a pattern: their marks mean nothing in it. */
export const literal = (words: string): string => words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
