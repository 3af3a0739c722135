declare module 'js-quantities' {
  /** The part of the library that the tests use: it ships no types. */
  export default class Qty {
    constructor(value: number | string, unit?: string);
    readonly scalar: number;
    to(unit: string): Qty;
    units(): string;
    static parse(text: string): Qty | null;
  }
}
