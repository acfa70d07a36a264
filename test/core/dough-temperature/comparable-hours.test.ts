import { expect, test } from 'vitest'
import { cardinalRate } from '@/core/dough-temperature/cardinal-temperature.ts'
import { comparableHours } from '@/core/dough-temperature/comparable-hours.ts'
import { proofMinutes, warmSeconds } from '@/core/dough-temperature/proof-minutes.ts'
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

test('minutes of proof: one hour at 24 °C takes 60 × 0.788/0.596 at 20 °C, so is 19.3 minutes behind', () => {
  // table: γ(24) = 0.788, γ(20) = 0.596
  expect(proofMinutes(3600, 24, 20)).toBeCloseTo(60 * (0.788 / 0.596 - 1), 0)
  expect(proofMinutes(3600, 24, 26)).toBeLessThan(0)
  expect(proofMinutes(3600, 24, 8)).toBeNull()
  expect(proofMinutes(3600, 24, 50)).toBeNull()
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
