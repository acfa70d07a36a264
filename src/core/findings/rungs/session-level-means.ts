import { unitMeans } from '@/core/statistics/block-model/unit-means.ts'
import type { ComparableMeans } from './comparable-means.ts'
import type { RungRows } from './rung-of.ts'

/**
 * Means of each level in each session, from means of pieces: y ~ flight + session × level, so that a piece that failed does not
 * leave its level to the kinder flights. Blocks are the sessions. Handled levels are averaged alike.
 */
export function sessionLevelMeans(pieces: ComparableMeans, levels: number): RungRows {
  const units = new Map<number, number>()
  const unit = pieces.session.map((session, at) => {
    const key = session * levels + (pieces.level[at] as number)
    const known = units.get(key) ?? units.size
    units.set(key, known)
    return known
  })
  const { means } = unitMeans({
    y: pieces.y,
    taster: pieces.flight,
    unit,
    tasterCount: 1 + pieces.flight.reduce((most, flight) => Math.max(most, flight), 0),
    unitCount: units.size,
  })
  const handled = [...units.keys()].map(() => ({ sum: 0, n: 0 }))
  for (const [at, code] of unit.entries()) {
    const one = handled[code] as { sum: number; n: number }
    one.sum += pieces.handled[at] as number
    one.n += 1
  }
  const keys = [...units.keys()]
  return {
    y: means.map((mean) => mean as number),
    block: keys.map((key) => Math.floor(key / levels)),
    level: keys.map((key) => key % levels),
    handled: handled.map(({ sum, n }) => sum / n),
  }
}
