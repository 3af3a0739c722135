import { chance, numbered, softmax } from './common.ts';

/**
 * Learns of several classes which one: climbs the log likelihood by AdaGrad with a pull toward nought, over features that
 * are there or not.
 */

/** A feature stands by its name. */
export interface Example {
  features: readonly string[];
  /** Position in the classes. */
  label: number;
  /** How much it counts, 1 for a sure one. */
  weight: number;
}

/** The feature that every example has. */
const COMMON = 'any';

export interface Settings {
  epochs: number;
  rate: number;
  /** Pull toward nought in proportion to the weight. */
  pull: number;
  /** Pull toward nought by a fixed step, which leaves most weights at nought. */
  thin: number;
  /** Features seen in fewer examples are left out. */
  least: number;
}

/** The same order on every run. */
function shuffled(n: number, seed: number): number[] {
  const order = Array.from({ length: n }, (_, i) => i);
  const next = chance(seed);
  for (let i = n - 1; i > 0; i--) {
    const j = next() % (i + 1);
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  return order;
}

class Climber {
  readonly w: Float64Array;
  private readonly g2: Float64Array;
  private readonly settings: Settings;
  constructor(size: number, settings: Settings) {
    this.w = new Float64Array(size);
    this.g2 = new Float64Array(size).fill(1e-2);
    this.settings = settings;
  }
  /** `free`: weights that nothing pulls, so that how common each class is stays as it was seen. */
  step(i: number, slope: number, free = false): void {
    const g = free ? slope : slope - this.settings.pull * this.w[i]!;
    this.g2[i]! += g * g;
    const rate = this.settings.rate / Math.sqrt(this.g2[i]!);
    const w = this.w[i]! + rate * g;
    this.w[i] = free ? w : Math.sign(w) * Math.max(0, Math.abs(w) - rate * this.settings.thin);
  }
}

/** Weights of each class by feature name. */
export function classify(examples: readonly Example[], classes: number, settings: Settings): Map<string, number>[] {
  const index = numbered(
    examples.map((e) => new Set(e.features)),
    settings.least,
  );
  const rows = examples.map((e) => ({ ...e, at: e.features.flatMap((f) => index.get(f) ?? []) }));
  const climber = new Climber(index.size * classes, settings);
  const common = index.get(COMMON);
  for (let epoch = 0; epoch < settings.epochs; epoch++)
    for (const r of shuffled(rows.length, epoch + 1)) {
      const { at, label, weight } = rows[r]!;
      const scores = Array.from({ length: classes }, (_, c) => at.reduce((s, i) => s + climber.w[i * classes + c]!, 0));
      const p = softmax(scores);
      for (let c = 0; c < classes; c++) {
        const slope = weight * ((c === label ? 1 : 0) - p[c]!);
        if (Math.abs(slope) > 1e-4) for (const i of at) climber.step(i * classes + c, slope, i === common);
      }
    }
  return Array.from(
    { length: classes },
    (_, c) => new Map([...index].map(([f, i]) => [f, climber.w[i * classes + c]!])),
  );
}
