/** Weights of the trade-off by response name; null until somebody moves one. */
export type Weights = readonly { response: string; weight: number }[] | null
