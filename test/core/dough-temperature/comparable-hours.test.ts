import { expect, test } from 'vitest'
import { cardinalRate } from '@/core/dough-temperature/cardinal-temperature.ts'
import { comparableHours } from '@/core/dough-temperature/comparable-hours.ts'
import { gassingQ10, gassingRate } from '@/core/dough-temperature/gassing-rate.ts'
import { minutesApart, proofMinutes, warmSeconds } from '@/core/dough-temperature/proof-minutes.ts'
import { step } from '../trial/a-plan.ts'

const at = (hours: number, celsius: number) => ({ seconds: hours * 3600, celsius })

test('at 24 °C comparable hours are hours; at 28 °C as many more as the curve says (table 0.935/0.788)', () => {
  const steady = comparableHours([at(0, 24), at(3, 24)])
  expect(steady).toMatchObject({ ok: true, elapsedHours: 3 })
  expect(steady.ok && steady.hours).toBeCloseTo(3, 12)
  const warm = comparableHours([at(1, 28), at(3, 28)])
  expect(warm.ok && warm.hours).toBeCloseTo((2 * 0.935) / 0.788, 2)
})

test('a ramp is integrated: Simpson agrees with a fine midpoint sum', () => {
  const ramp = comparableHours([at(0, 16), at(2, 30), at(5, 22)])
  let sum = 0
  const steps = 20_000
  for (let index = 0; index < steps; index += 1) {
    const hours = ((index + 0.5) * 5) / steps
    const celsius = hours < 2 ? 16 + 7 * hours : 30 - (8 / 3) * (hours - 2)
    sum += ((cardinalRate(celsius) / cardinalRate(24)) * 5) / steps
  }
  expect(ramp.ok && ramp.hours).toBeCloseTo(sum, 6)
})

test('reasons: too few readings, out of order, colder than 10 °C with the elapsed hours', () => {
  expect(comparableHours([at(0, 24)])).toEqual({ ok: false, reason: 'needs-two-readings' })
  expect(comparableHours([at(2, 24), at(1, 24)])).toEqual({ ok: false, reason: 'not-in-order' })
  expect(comparableHours([at(0, 24), at(12, 5)])).toEqual({
    ok: false,
    reason: 'below-ten-degrees',
    elapsedHours: 12,
    coldestCelsius: 5,
  })
})

test.each([
  [18, 0.64],
  [20, 0.74],
  [22, 0.86],
  [26, 1.16],
  [28, 1.35],
  [30, 1.56],
  [32, 1.81],
])(
  'dough of %d °C gasses %d times as fast as at 24 °C (computed table, Q10 2.1)',
  (celsius, rate) => {
    expect(gassingRate(celsius, 24)).toBeCloseTo(rate, 2)
  },
)

test('gas outside 15 to 34 °C is not told; its range is Q10 1.8 to 2.6 (computed table: 0.70 and 0.56 at 18 °C)', () => {
  expect(gassingRate(14.9, 24)).toBeNull()
  expect(gassingRate(34.1, 24)).toBeNull()
  expect(gassingRate(18, 24, gassingQ10.least)).toBeCloseTo(0.7, 2)
  expect(gassingRate(18, 24, gassingQ10.most)).toBeCloseTo(0.56, 2)
})

test('minutes of proof: a degree near 24 °C is 4.5 of 60 minutes, 3.5 to 6 over the range (computed table)', () => {
  expect(proofMinutes(3600, 24, 23)).toBeCloseTo(4.6, 1)
  expect(proofMinutes(3600, 24, 25)).toBeCloseTo(-4.3, 1)
  expect(proofMinutes(3600, 24, 23, gassingQ10.least)).toBeCloseTo(3.6, 1)
  expect(proofMinutes(3600, 24, 23, gassingQ10.most)).toBeCloseTo(6, 1)
  expect(proofMinutes(3600, 24, 8)).toBeNull()
  expect(proofMinutes(3600, 24, 50)).toBeNull()
})

test('doughs a degree apart lie 4.5 of 60 minutes apart, 3.5 to 6 over the range', () => {
  const { spreadMinutes, spreadMinutesEnds } = minutesApart(3600, 24, [23, 24])
  expect(spreadMinutes).toBeCloseTo(4.6, 1)
  expect(spreadMinutesEnds?.least).toBeCloseTo(3.6, 1)
  expect(spreadMinutesEnds?.most).toBeCloseTo(6, 1)
  expect(minutesApart(3600, 24, [8, 24])).toEqual({ spreadMinutes: null, spreadMinutesEnds: null })
})

test('the warm time counts rests, folds with their repeats and proofs, no cold proof', () => {
  const folds = { ...step('fold', 'fold', 1800), repeats: 3 }
  const steps = [
    step('mix', 'mix', 600),
    folds,
    step('cold', 'cold-proof', 86_400),
    step('p', 'proof', 3600),
  ]
  expect(warmSeconds(steps)).toBe(3 * 1800 + 3600)
})
