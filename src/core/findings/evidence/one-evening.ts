import type { Cells } from '@/core/findings/rungs/cells.ts'
import type { ScoreResponse, ScoreTable } from '@/core/findings/table/score-table.ts'
import type { Better } from '@/core/trial/response.ts'
import type { OneEvening } from './conclusion-shape.ts'

/**
 * The order in which one taster put the levels on the one evening of a trial, by plain means of what was scored; null for several
 * tasters or sessions, for a response that no taster scores or that is not the main one, and for a table that is no trial.
 */
export function oneEveningOf(
  scores: ScoreTable,
  index: number,
  cells: Cells,
  response: Pick<ScoreResponse, 'better'>,
): OneEvening | null {
  const [taster, another] = cells.tasters
  const { written } = scores
  if (index !== 0 || !written || cells.sessions !== 1) return null
  if (taster === undefined || another !== undefined) return null
  const order = orderOf(scores, cells, response.better)
  if (order.flat().length < 2) return null
  return {
    order,
    blind: !scores.knowing?.includes(taster),
    left: Math.max(0, (written.mostSessions ?? 1) - 1),
  }
}

/** The levels from best to worst, those with the same mean together. */
function orderOf({ levels }: ScoreTable, cells: Cells, better: Better): string[][] {
  const sums = levels.map(() => ({ sum: 0, n: 0 }))
  for (let row = 0; row < cells.y.length; row += 1) {
    const own = sums[cells.level[row] as number]
    if (!own) continue
    own.sum += cells.y[row] as number
    own.n += 1
  }
  const ranked = levels
    .flatMap(({ id }, at) => {
      const { sum = 0, n = 0 } = sums[at] ?? {}
      return n === 0 ? [] : [{ id, worth: worthOf(sum / n, better) }]
    })
    .toSorted((a, b) => b.worth - a.worth)
  const groups: { worth: number; ids: string[] }[] = []
  for (const { id, worth } of ranked) {
    const last = groups.at(-1)
    if (last && last.worth - worth < 1e-9) last.ids.push(id)
    else groups.push({ worth, ids: [id] })
  }
  return groups.map(({ ids }) => ids)
}

/** A mean turned so that more is better; a target by its distance, and where neither way is better the higher first. */
function worthOf(mean: number, better: Better): number {
  if (better.is === 'lower') return -mean
  return better.is === 'target' ? -Math.abs(mean - better.at) : mean
}
