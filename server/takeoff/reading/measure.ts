/** What a kind of goods is reckoned from. */
export type Measure = 'area' | 'length' | 'volume';
