/** Weights are laid out alike for every room of the parser. */
export { columns, dot, onDemand, type Rows, rowsOf, type Weights } from '../weights.ts';
