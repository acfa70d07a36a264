import { expect, test } from 'vitest'
import { pooledModel } from '@/core/findings/pooled/pooled-model.ts'
import reference from './reference/pooled-blocks.json' with { type: 'json' }

// Values of pooled-blocks.py beside this file (numpy and scipy; R was not to be had), the R calls named there.
const values = [...new Set(reference.rows.map(([, , level]) => Number(level)))].sort(
  (a, b) => a - b,
)
const rows = {
  y: reference.rows.map((row) => Number(row[3])),
  trial: reference.rows.map((row) => Number(row[0])),
  session: reference.rows.map((row) => Number(row[1])),
  level: reference.rows.map((row) => values.indexOf(Number(row[2]))),
  trialCount: 3,
  levelCount: values.length,
}
const model = pooledModel(rows, values)
const close = (expected: Record<string, number>) =>
  Object.fromEntries(
    Object.entries(expected).map(([key, value]) => [key, expect.closeTo(value, 9)]),
  )

test('level after blocks, each session of each trial a block of its own', () => {
  expect(model.levels).toMatchObject(close(reference.levels))
})

test('heterogeneity: trial × level after sessions and levels', () => {
  expect(model.heterogeneity).toMatchObject(close(reference.heterogeneity))
})

test('the line and the top of the curve through all', () => {
  expect(model.slope).toMatchObject(close(reference.slope))
  expect(model.best).toMatchObject({ isTop: true, vertex: expect.closeTo(reference.vertex, 8) })
})

test('one trial twice over is the same as its sessions side by side', () => {
  const one = rows.trial.flatMap((trial, at) => (trial === 0 ? [at] : []))
  const pick = (list: readonly number[]) => one.map((at) => list[at] as number)
  const own = {
    y: pick(rows.y),
    session: pick(rows.session),
    level: pick(rows.level),
    levelCount: 4,
  }
  const together = pooledModel(
    { ...own, trial: one.map(() => 0), trialCount: 1 },
    values.slice(0, 4),
  )
  const apart = pooledModel({ ...own, trial: own.session, trialCount: 3 }, values.slice(0, 4))
  expect(apart.levels).toEqual(together.levels)
  // With one session each nothing is left to tell whether they agree.
  expect(apart.heterogeneity).toMatchObject({ ok: false })
})
