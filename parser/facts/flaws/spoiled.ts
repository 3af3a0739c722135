const SPOILED =
  'broken busted bust cracked rotten rotted bent dead bad missing damaged torn chipped burnt burned leaking smashed warped dented faulty ripped rusted rusty crushed wrecked perished';

const words = new Set(SPOILED.split(' '));

/** A word before a thing that is to be replaced, and no part of its name: "four of those" behind "four busted tiles". */
export const isSpoiled = (word: string): boolean => words.has(word);
