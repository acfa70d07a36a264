import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findings } from '@/core/findings/findings.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { madeUp, madeUpRows, tableOf } from './score-tables.ts'

const runs = { numRuns: 12, seed: 20 }
const trials = fc.record({
  seed: fc.integer({ min: 1, max: 1_000_000 }),
  tasters: fc.integer({ min: 2, max: 9 }),
  sessions: fc.integer({ min: 2, max: 4 }),
  flights: fc.integer({ min: 1, max: 2 }),
  round: fc.boolean(),
})
const levels = [60, 65, 68, 75]

function found(scores: ScoreTable) {
  const [response] = findings(scores, { seed: 5, resamples: 100 }).responses
  if (!response) throw new Error('no response')
  return response
}

/** The same document, numbers within rounding of each other. */
function expectAlike(one: unknown, other: unknown, path = '$'): void {
  if (typeof one === 'number' && typeof other === 'number') {
    const size = Math.max(1, Math.abs(one), Math.abs(other))
    if (Math.abs(one - other) > 1e-7 * size)
      expect({ path, value: one }).toEqual({ path, value: other })
    return
  }
  if (typeof one !== 'object' || one === null || typeof other !== 'object' || other === null) {
    expect(one, path).toEqual(other)
    return
  }
  expect(Object.keys(one), path).toEqual(Object.keys(other))
  for (const [key, value] of Object.entries(one)) {
    expectAlike(value, Object.entries(other).find(([name]) => name === key)?.[1], `${path}.${key}`)
  }
}

describe('findings', () => {
  it('do not depend on the order of rows', () => {
    fc.assert(
      fc.property(trials, (trial) => {
        const rows = madeUpRows({ ...trial, levels })
        const random = madeUp(trial.seed + 1)
        const mixed = rows
          .map((row) => ({ row, at: random() }))
          .toSorted((a, b) => a.at - b.at)
          .map(({ row }) => row)
        const options = { control: 65, margin: 0.8 }
        expectAlike(found(tableOf(mixed, options)), found(tableOf(rows, options)))
      }),
      runs,
    )
  })

  it('move means alone when every score is shifted', () => {
    fc.assert(
      fc.property(trials, fc.double({ min: -50, max: 50, noNaN: true }), (trial, shift) => {
        const rows = madeUpRows({ ...trial, levels })
        const shifted = rows.map((row) => ({ ...row, liking: Number(row.liking) + shift }))
        const [plain, moved] = [found(tableOf(rows)), found(tableOf(shifted))]
        for (const name of ['rows', 'pieces', 'factor'] as const) {
          const [a, b] = [plain[name], moved[name]]
          if (!isPresent(a) || !isPresent(b)) throw new Error('both answer')
          for (const [at, mean] of a.means.entries()) {
            expect(b.means[at]?.estimate).toBeCloseTo(mean.estimate + shift, 8)
            expect(b.means[at]?.se).toBeCloseTo(mean.se, 8)
          }
          expectAlike({ ...b, means: [] }, { ...a, means: [] })
        }
        expectAlike(moved.ranks, plain.ranks)
      }),
      runs,
    )
  })

  it('do not depend on what tasters are called', () => {
    fc.assert(
      fc.property(trials, (trial) => {
        const rows = madeUpRows({ ...trial, levels })
        const renamed = rows.map((row) => ({
          ...row,
          taster: `other ${9 - Number(`${row.taster}`.slice(1))}`,
        }))
        const [a, b] = [found(tableOf(rows)), found(tableOf(renamed))]
        const bare = (one: typeof a) => ({
          ...one,
          ...{ agreement: [], bootstrap: null },
          conclusion: {
            ...one.conclusion,
            hangs: {
              ...one.conclusion.hangs,
              tasters: one.conclusion.hangs.tasters.length,
              ending: {
                ...one.conclusion.hangs.ending,
                tasters: one.conclusion.hangs.ending.tasters.length,
              },
            },
          },
        })
        expectAlike(bare(b), bare(a))
        expectAlike(
          b.agreement.map(({ taster: _, ...rest }) => rest).toReversed(),
          a.agreement.map(({ taster: _, ...rest }) => rest),
        )
      }),
      runs,
    )
  })

  it('permute pairs when the names of two levels are swapped', () => {
    fc.assert(
      fc.property(trials, (trial) => {
        const rows = madeUpRows({ ...trial, levels })
        const swapped = rows.map((row) => ({
          ...row,
          level: row.level === 60 ? 75 : row.level === 75 ? 60 : Number(row.level),
        }))
        const back = (level: unknown) => (level === '60' ? '75' : level === '75' ? '60' : level)
        const [a, b] = [found(tableOf(rows)).factor, found(tableOf(swapped)).factor]
        if (!isPresent(a) || !isPresent(b)) throw new Error('both answer')
        expect(b.f).toBeCloseTo(a.f, 8)
        for (const pair of b.pairs) {
          const [first, second] = [back(pair.a), back(pair.b)]
          const same = a.pairs.find((each) => each.a === first && each.b === second)
          const turned = a.pairs.find((each) => each.a === second && each.b === first)
          expect(pair.difference).toBeCloseTo(same?.difference ?? -(turned?.difference ?? NaN), 9)
          expect(pair.p).toBeCloseTo((same ?? turned)?.p ?? NaN, 7)
        }
      }),
      runs,
    )
  })

  it('scale the slope when the levels are scaled', () => {
    fc.assert(
      fc.property(trials, fc.double({ min: 0.001, max: 1000, noNaN: true }), (trial, scale) => {
        const rows = madeUpRows({ ...trial, levels })
        const scaled = rows.map((row) => ({ ...row, level: Number(row.level) * scale }))
        const [a, b] = [found(tableOf(rows)).factor, found(tableOf(scaled)).factor]
        if (!isPresent(a) || !isPresent(b)) throw new Error('both answer')
        if (!isPresent(a.trend) || !isPresent(b.trend)) throw new Error('both have a trend')
        expectAlike(b.trend.slope * scale, a.trend.slope)
        expectAlike(b.trend.p, a.trend.p)
        expectAlike(b.f, a.f)
        if (!isPresent(a.best) || !isPresent(b.best)) throw new Error('both have a curve')
        expectAlike(b.best.quadratic * scale * scale, a.best.quadratic)
        expect(b.best.answer).toBe(a.best.answer)
      }),
      runs,
    )
  })

  it('treat the mean of a unit as the mean over one common panel', () => {
    // A taster two points harsher misses one dough; with additive scores the marginal means stay exactly equal.
    const rows = [1, 2].flatMap((session) =>
      [60, 70].flatMap((level) =>
        ['a', 'b', 'harsh'].map((taster) => ({
          session,
          level,
          taster,
          liking: 5 + 0.1 * session + (taster === 'harsh' ? -2 : 0),
        })),
      ),
    )
    const missing = rows.filter(
      (row) => !(row.session === 1 && row.level === 70 && row.taster === 'harsh'),
    )
    // One dough is worse by 0.5 for everybody, so that there is something left over to test against.
    const scores = tableOf(
      missing.map((row) => ({
        ...row,
        liking: row.liking - (row.session === 2 && row.level === 60 ? 0.5 : 0),
      })),
    )
    const { factor } = found(scores)
    if (!isPresent(factor)) throw new Error('the factor rung answers')
    // Unit means: 60 in session 1 and 2: 4.4333, 4.0333; 70: 4.4333, 4.5333; differences 0 and 0.5, mean 0.25.
    expect(factor.pairs[0]?.difference).toBeCloseTo(0.25, 12)
    expect(factor.means[0]?.estimate).toBeCloseTo((5.1 - 2 / 3 + 4.7 - 2 / 3) / 2, 12)
  })
})
