import { expect, test } from 'vitest'
import { fairnessOfPlan } from '@/core/fairness/fairness-of-plan.ts'
import type { Ingredient } from '@/core/formula/formula-record.ts'
import { madePlan } from '../core/made-plan.ts'
import { scale } from '../core/trial/a-plan.ts'

const seeds = Array.from({ length: 12 }, (_, index): Ingredient => {
  return { id: `s${index}`, name: `seed ${index}`, kind: 'other', percent: 1 }
})

test('the fairness check of 8 levels × 16 ingredients takes less than 30 ms of computing', () => {
  const scales = [scale(1, 5000), scale(0.1, 500), scale(0.01, 100)]
  const made = madePlan()
  const plan = madePlan({
    formula: { ...made.formula, ingredients: [...made.formula.ingredients, ...seeds] },
    levels: [60, 62, 64, 66, 68, 70, 72, 74].map((value) => ({
      ...{ id: `l${value}`, value, label: String(value), control: value === 66 },
    })),
    temperature: { wantedDoughCelsius: 25, flourCelsius: 21, roomCelsius: 22, matched: false },
    kitchenIds: scales.map(({ id }) => id),
    plannedSessions: 3,
  })
  const once = () => {
    const begun = process.cpuUsage()
    const items = fairnessOfPlan(plan, { kitchen: scales, trialSeed: 9, sessions: [] })
    const { user, system } = process.cpuUsage(begun)
    expect(items.length).toBeGreaterThan(10)
    return (user + system) / 1000
  }
  for (let warm = 0; warm < 20; warm += 1) once()
  const middle = Array.from({ length: 15 }, once).toSorted((a, b) => a - b)[7] ?? 1e9
  expect(middle).toBeLessThan(30)
})
