import type { Cells } from '@/core/findings/rungs/cells.ts'
import type { Conclusion } from './conclusion-shape.ts'
import { type FirstStepInput, firstStep } from './first-step.ts'

/** With more sessions or tasters none weighs so much, and leaving each out would take its time. */
const mostLeftOut = 20
const notLooked: Conclusion['hangs'] = { looked: false, tasters: [], sessions: [] }

/**
 * The verdict without each taster and without each session: on whom or on which (by number, from 1) the first step hangs, because without
 * them it says something else. Looked at where every taster scored every level in every session equally often, of three
 * sessions or tasters or more and twenty at most.
 */
export function hangsOn(cells: Cells, levels: number, input: FirstStepInput): Conclusion['hangs'] {
  const table = completeTable(cells, levels)
  if (!table) return notLooked
  const { sums, each, sessions, tasters } = table
  const unitsOf = (less: number | null): number[][] =>
    Array.from({ length: sessions }, (_, session) =>
      Array.from({ length: levels }, (__, level) => {
        let sum = 0
        for (let taster = 0; taster < tasters; taster += 1)
          if (taster !== less) sum += sums[(taster * sessions + session) * levels + level] as number
        return sum / (each * (tasters - (less === null ? 0 : 1)))
      }),
    )
  const whole = unitsOf(null)
  const said = firstStep(whole, input)
  const mayTasters = cells.tasters.length >= 3 && tasters <= mostLeftOut
  const maySessions = sessions >= 3 && sessions <= mostLeftOut
  if (!mayTasters && !maySessions) return notLooked
  return {
    looked: true,
    tasters: mayTasters
      ? cells.tasters.filter((_, taster) => firstStep(unitsOf(taster), input) !== said)
      : [],
    sessions: maySessions
      ? whole.flatMap((_, session) => {
          const rest = whole.filter((__, other) => other !== session)
          return firstStep(rest, input) === said ? [] : [session + 1]
        })
      : [],
  }
}

/** Sums of every taster's scores in each session at each level, where all are there equally often; else null. */
function completeTable(cells: Cells, levels: number) {
  const tasters = Math.max(1, cells.tasters.length)
  const { sessions } = cells
  if (sessions < 2) return null
  const size = tasters * sessions * levels
  const each = cells.y.length / size
  if (!Number.isInteger(each) || each === 0) return null
  const sums = new Float64Array(size)
  const counts = new Int32Array(size)
  for (let row = 0; row < cells.y.length; row += 1) {
    const taster = Math.max(0, cells.taster[row] as number)
    const at =
      (taster * sessions + (cells.session[row] as number)) * levels + (cells.level[row] as number)
    sums[at] = (sums[at] as number) + (cells.y[row] as number)
    counts[at] = (counts[at] as number) + 1
  }
  return counts.every((count) => count === each) ? { sums, each, sessions, tasters } : null
}
