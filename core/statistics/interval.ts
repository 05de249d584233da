/** An estimate's interval. */
export interface Interval {
  readonly lower: number;
  readonly upper: number;
}

/** The level of every interval where the caller says nothing else. */
export const LEVEL = 0.95;
