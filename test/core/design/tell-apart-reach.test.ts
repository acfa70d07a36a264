import { expect, test } from 'vitest'
import { tellApartReach } from '@/core/design/tell-apart-reach.ts'
import type { TellApart } from '@/core/trial/plan-record.ts'
import reference from '../../outside/reference/discrimination.json'
import { relativeError } from '../../outside/relative-error.ts'

const sets = (kind: TellApart['test'] | null, tasters: number, plannedSessions: number) => ({
  tellApart: kind && { test: kind, levelIds: ['a', 'b'] },
  tasters: Array.from({ length: tasters }, (_, at) => ({ tasterId: `t${at}`, knows: false })),
  plannedSessions,
})

test('right answers needed agree with the exact tables, over tasters and sessions', () => {
  // reference/discrimination.json: computed exact tables; 12 answers are 4 tasters in 3 sessions.
  const triangle = reference.triangle.find(({ n }) => n === 12)
  expect(tellApartReach(sets('triangle', 4, 3))).toMatchObject({
    answers: 12,
    needed: triangle?.a05,
  })
  const duoTrio = reference.duo_trio_and_one_sided_paired.find(({ n }) => n === 12)
  expect(tellApartReach(sets('duo-trio', 6, 2))?.needed).toBe(duoTrio?.a05)
  const paired = reference.two_sided_preference.find(({ n }) => n === 12)
  expect(tellApartReach(sets('paired', 12, 1))?.needed).toBe(paired?.a05)
})

test('power and enough answers agree with the computed ones where half of the people tell', () => {
  const known = reference.power_triangle.filter(({ pd, alpha }) => pd === 0.5 && alpha === 0.05)
  expect(known.length).toBeGreaterThan(0)
  for (const { n, power } of known)
    expect(relativeError(tellApartReach(sets('triangle', n, 1))?.power ?? 0, power)).toBeLessThan(
      1e-9,
    )
  const enough = reference.sample_sizes.filter(
    ({ pd, alpha, power }) => pd === 0.5 && alpha === 0.05 && power === 0.8,
  )
  expect(enough.length).toBeGreaterThan(0)
  for (const row of enough)
    expect(
      tellApartReach(sets(row.test === 'triangle' ? 'triangle' : 'duo-trio', 5, 1)),
    ).toMatchObject({ enough: row.smallest_n_from_which_power_holds_always })
})

test('too few answers say so, and nothing is said where no test is planned or nobody tastes', () => {
  // Five answers of a two-sided pair: all five right come by guessing once in sixteen (6.25 %).
  expect(tellApartReach(sets('paired', 5, 1))).toMatchObject({ needed: null, power: 0 })
  expect(tellApartReach(sets(null, 5, 1))).toBe(null)
  expect(tellApartReach(sets('triangle', 0, 2))).toBe(null)
})
