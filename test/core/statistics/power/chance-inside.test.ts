import { describe, expect, it } from 'vitest'
import { chanceFrom } from '@/core/design/chance.ts'
import { normalDraws } from '@/core/findings/rehearsal/normal-draws.ts'
import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import { chanceFirst } from '@/core/statistics/power/chance-first.ts'
import { chanceInside } from '@/core/statistics/power/chance-inside.ts'

/** Made tables of unit means, sessions × levels, judged by plain sums: orthogonal polynomials of 3, 4 and 5 even levels (printed tables). */
const bends: Record<number, number[]> = {
  3: [-1, 2, -1],
  4: [-1, 1, 1, -1],
  5: [-2, 1, 2, 1, -2],
}

function simulated(levels: number, sessions: number, sd: number, height: number, runs: number) {
  const normal = normalDraws(chanceFrom(7, levels, sessions))
  const alpha = 0.04
  const df = (levels - 1) * (sessions - 1)
  const [two, one] = [tHalfWidth(1 - alpha, df), tHalfWidth(1 - 2 * alpha, df)]
  const bend = bends[levels] as number[]
  let found = 0
  for (let run = 0; run < runs; run += 1) {
    const table = Array.from({ length: sessions }, () =>
      Array.from({ length: levels }, (_, at) => {
        const x = (2 * at) / (levels - 1) - 1
        return height * (1 - x * x) + sd * Math.sqrt(sessions) * normal()
      }),
    )
    const mean = (of: number[]) => of.reduce((sum, each) => sum + each / of.length, 0)
    const means = bend.map((_, at) => mean(table.map((row) => row[at] as number)))
    const grand = mean(means)
    let left = 0
    for (const row of table)
      for (const [at, value] of row.entries())
        left += (value - mean(row) - (means[at] as number) + grand) ** 2
    const error = Math.sqrt(left / df / sessions)
    const sum = (weights: number[]) => weights.reduce((all, w, at) => all + w * (means[at] ?? 0), 0)
    const t = (weights: number[]) => sum(weights) / (error * Math.hypot(...weights))
    const less = (end: number) =>
      bend.map((_, at) => (at === end ? -1 : at === 0 || at === levels - 1 ? 0 : 1 / (levels - 2)))
    if (t(bend) >= two && t(less(0)) >= one && t(less(levels - 1)) >= one) found += 1
  }
  return found / runs
}

describe('the chance to show a best in between', () => {
  it.each([
    [3, 2, 0.47, 2],
    [3, 3, 0.38, 2],
    [4, 3, 0.5, 1.6],
    [5, 3, 0.48, 1.6],
  ])('%i levels, %i sessions: as often as made tables show it', (levels, sessions, sd, height) => {
    const df = (levels - 1) * (sessions - 1)
    const chance = chanceInside({ levels, meanSd: sd, df, height, alpha: 0.04 })
    // 6000 made tables: error of the share at most .0065.
    expect(Math.abs(chance - simulated(levels, sessions, sd, height, 6000))).toBeLessThan(0.02)
  })

  it('needs three levels and an error of its own', () => {
    expect(chanceInside({ levels: 2, meanSd: 1, df: 4, height: 9, alpha: 0.04 })).toBe(0)
    expect(chanceInside({ levels: 3, meanSd: 1, df: 0, height: 9, alpha: 0.04 })).toBe(0)
  })

  it('is all but sure of a hump that towers over the error', () => {
    const sure = chanceInside({ levels: 4, meanSd: 0.1, df: 9, height: 5, alpha: 0.04 })
    expect(sure).toBeGreaterThan(0.9999)
    expect(sure).toBeLessThanOrEqual(1 + 1e-9)
  })

  it('puts the better of two first as a normal difference does', () => {
    // Two levels: Φ(d/√2); d = √2 · 1.959964 gives 0.975 (printed tables).
    expect(chanceFirst(2, Math.SQRT2 * 1.959964)).toBeCloseTo(0.975, 6)
    expect(chanceFirst(5, 0)).toBeCloseTo(0.2, 10)
  })
})
