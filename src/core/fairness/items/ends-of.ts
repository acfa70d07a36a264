/** Lowest and highest of some numbers; null when there is none. */
export function endsOf(values: readonly number[]): { low: number; high: number } | null {
  return values.length === 0 ? null : { low: Math.min(...values), high: Math.max(...values) }
}

/** Mean of some numbers; NaN of none, so never asked of an empty list. */
export function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}

/** How far apart the ends lie, in percent of the middle between them; 0 when they are both 0. */
export function apartPercent({ low, high }: { low: number; high: number }): number {
  return low + high === 0 ? 0 : ((high - low) / ((low + high) / 2)) * 100
}

/** Means of the values of each level, in the plan's order of levels; levels without a value are left out. */
export function meansByLevel(
  rows: readonly { levelId: string; value: number }[],
): { levelId: string; value: number }[] {
  const byLevel = new Map<string, number[]>()
  for (const { levelId, value } of rows)
    byLevel.set(levelId, [...(byLevel.get(levelId) ?? []), value])
  return [...byLevel].map(([levelId, values]) => ({ levelId, value: meanOf(values) }))
}
