import { expect, test } from 'vitest'
import { restInMixSeconds } from '@/core/dough-temperature/autolyse-of-plan.ts'
import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import { applyRemedy } from '@/core/fairness/apply-remedy.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { fairnessText } from '@/core/wording/fairness/fairness-text.ts'
import { aPlan, levelsOf, plainFormula, step } from '../trial/a-plan.ts'
import { itemOf, itemsOf } from './fair-plan.ts'

const bare = { ...plainFormula, ingredients: plainFormula.ingredients.slice(0, 2) }
const cool = { wantedDoughCelsius: 25, flourCelsius: 21, roomCelsius: 21, matched: false }
const soaked = (change: Partial<Plan> = {}) =>
  aPlan({
    ...{ formula: bare, temperature: cool, levels: levelsOf([65, 70], 65) },
    steps: [step('soak', 'autolyse', 1800), ...aPlan().steps],
    ...change,
  })

test('an autolyse that cools is to be known with one water for all, and fine once each batch has its own', () => {
  const plan = soaked()
  const item = itemOf(itemsOf(plan), 'rest-in-mix')
  if (!item) throw new Error('no item')
  // 1.65 kg: τ = 2.5 × 1.65^⅓ = 2.954 h, e^(−0.5/2.954) = 0.8443; before the rest 21 + 4/0.8443 = 25.74: 0.74 °C lost
  expect(item.data.driftCelsius).toBeCloseTo(-0.738, 2)
  expect(item.severity).toBe('know')
  expect(fairnessText(item, plan).sentence).toContain(
    'the doughs stand 30 min before their mix ends and come up to 0.7 °C nearer to the room’s 21 °C',
  )
  const [remedy] = item.remedies
  if (!remedy) throw new Error('no remedy')
  const mended = itemOf(itemsOf(applyRemedy(plan, remedy)), 'rest-in-mix')
  expect(mended).toMatchObject({ severity: 'fine', data: { carried: true } })
  expect(
    itemOf(itemsOf(aPlan({ formula: bare, temperature: cool })), 'rest-in-mix'),
  ).toBeUndefined()
})

test('any rest between two mixes counts, one ahead of the water or after the last mix does not', () => {
  const [mix] = aPlan().steps
  if (mix?.kind !== 'mix') throw new Error('the plan begins with its mix')
  const rest = step('rest', 'rest', 600)
  const again = { ...step('knead', 'mix', 0), id: 'knead' }
  const seconds = (steps: Plan['steps']) => restInMixSeconds(soaked({ steps }), null)
  const bareMix = { ...mix, waitSeconds: 0 }
  expect(seconds([rest, bareMix])).toBe(0)
  expect(seconds([bareMix, rest])).toBe(0)
  expect(seconds([bareMix, rest, again])).toBe(600)
  expect(seconds([{ ...mix, waitSeconds: 300 }, rest, again])).toBe(900)
})

test('where the autolyse is the factor, each level cools by its own, and its water makes up for it', () => {
  const plan = soaked({
    factor: {
      ...{ name: 'autolyse', unitOfMeasure: 'min', splitsAt: 'mix', held: 'dough' },
      acts: { on: 'rest-time', stepId: 'soak' },
    },
    levels: levelsOf([0, 60], 0),
    temperature: { ...cool, matched: true },
  })
  const water = waterPlan(plan, [])
  if (!water.ok) throw new Error(water.reason)
  const [none, hour] = water.batches
  // one water for all leaves the dough that stood an hour e^(−1/2.954) = 0.713 of its 4 °C above the room (1.7 kg: 0.715)
  expect(none?.oneWaterDoughCelsius).toBeCloseTo(25, 6)
  expect(hour?.oneWaterDoughCelsius).toBeCloseTo(21 + 4 * 0.715, 1)
  expect(hour?.waterCelsius).toBeGreaterThan((none?.waterCelsius ?? 99) + 1)
  expect(itemOf(itemsOf(plan), 'rest-in-mix')?.data).toMatchObject({ low: 0, high: 60 })
})
