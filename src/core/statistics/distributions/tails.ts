/** Both tails of a distribution at one point; the smaller one is computed, never got by subtracting from one. */
export type Tails = { lower: number; upper: number }
