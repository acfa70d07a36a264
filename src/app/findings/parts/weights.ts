/** Weights of the trade-off by response id; null until somebody moves one. */
export type Weights = readonly { responseId: string; weight: number }[] | null
