/** A level's mean over tasters' own means, and the same without one of them. */
export interface WithoutOne {
  /** Null for everybody. */
  tasterId: string | null
  /** In the order of the levels; null where nobody who is left scored it. */
  means: (number | null)[]
  /** The index of the highest mean; null where there is none, or two are equal. */
  highest: number | null
}

/**
 * Each level's mean over the tasters, each taster counting once by their own mean of it, with everybody and without each taster
 * in turn: shown side by side, since nobody is dropped. Answers on the response's own scale.
 */
export function withoutEach(
  rows: readonly { tasterId: string; levelId: string; value: number }[],
  levelIds: readonly string[],
): WithoutOne[] {
  const tasters = [...new Set(rows.map(({ tasterId }) => tasterId))]
  const cells = new Map<string, Map<string, number[]>>()
  for (const { tasterId, levelId, value } of rows) {
    const levels = cells.get(tasterId) ?? new Map<string, number[]>()
    cells.set(tasterId, levels)
    const values = levels.get(levelId)
    if (values) values.push(value)
    else levels.set(levelId, [value])
  }
  const means = new Map(
    [...cells].map(([tasterId, levels]) => [
      tasterId,
      new Map([...levels].map(([levelId, values]) => [levelId, meanOf(values)])),
    ]),
  )
  const own = (tasterId: string, levelId: string) => means.get(tasterId)?.get(levelId) ?? null
  const over = (left: readonly string[], tasterId: string | null): WithoutOne => {
    const means = levelIds.map((levelId) => meanOf(left.flatMap((id) => own(id, levelId) ?? [])))
    const best = Math.max(...means.flatMap((mean) => mean ?? []))
    const first = means.indexOf(best)
    return {
      tasterId,
      means,
      highest: first >= 0 && first === means.lastIndexOf(best) ? first : null,
    }
  }
  return [
    over(tasters, null),
    ...tasters.map((tasterId) =>
      over(
        tasters.filter((id) => id !== tasterId),
        tasterId,
      ),
    ),
  ]
}

function meanOf(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length
}
