import { expect, test } from 'vitest'
import { adoptLevel } from '@/core/house/adopt-level.ts'
import { houseChanges, revisedHouse } from '@/core/house/changed-house.ts'
import { houseCard } from '@/core/house/house-card.ts'
import { houseShape } from '@/core/house/house-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { yieldText } from '@/core/wording/house/house-text.ts'
import { sampleTrial } from '../../cli/sample-file.ts'

const flatbread = sampleTrial('flatbread-hydration')
const plan = planInForce(flatbread)
const restsOn = {
  trialId: flatbread.trial.id,
  question: plan.question,
  level: '62 %',
  because: 'picked' as const,
  sessions: 1,
  tasters: 4,
  said: '',
}
const when = { at: 1_760_000_000_000, zone: 'Europe/Rome' }

function adopted(value: number) {
  const level = plan.levels.find((one) => one.value === value)
  if (!level) throw new Error(`no level ${value}`)
  const made = adoptLevel(plan, level, restsOn, when)
  if (!made.ok) throw new Error(made.trouble.reason)
  return made.revision
}

// Flatbread at 62 %: 100 + 62 + 1.9 + 0.25 + 2 = 166.15 parts. Six pieces of 280 g with 2 % lost are 1714.2857 g of dough,
// so flour 1031.770, water 639.697, salt 19.604, yeast 2.579, oil 20.635 g.
test('six pieces of 280 g, by hand, on the trial’s scales', () => {
  const made = { by: 'pieces' as const, pieces: 6, pieceGrams: 280, lossPercent: 2 }
  const card = houseCard(adopted(62), 'Club flatbread', flatbread.kitchen, { made })
  expect(card.doughGrams).toBeCloseTo(1714.2857, 3)
  expect(card.flourGrams).toBeCloseTo(1031.77, 2)
  const [dough] = card.parts
  const grams = dough?.lines.map(({ name, grams: weight }) => [name, weight])
  expect(grams).toEqual(
    [
      ['Plain wheat flour', 1032],
      ['Water', 640],
      ['Salt', 19.6],
      ['Instant yeast', 2.58],
      ['Sunflower oil', 20.64],
    ].map(([name, weight]) => [name, expect.closeTo(Number(weight), 6)]),
  )
  expect(dough?.lines.map(({ percent }) => percent)).toEqual(
    [100, 62, 1.9, 0.25, 2].map((percent) => expect.closeTo(percent, 9)),
  )
  expect(card.hydrationPercent).toBeCloseTo(62, 9)
})

test('the water for today’s kitchen: a warmer room wants colder water', () => {
  const warm = houseCard(adopted(62), 'Club flatbread', flatbread.kitchen, {
    today: { roomCelsius: 28, flourCelsius: 28 },
  })
  const cold = houseCard(adopted(62), 'Club flatbread', flatbread.kitchen, {
    today: { roomCelsius: 16, flourCelsius: 16 },
  })
  const water = (card: typeof warm) => card.water?.batches[0]?.waterCelsius ?? Number.NaN
  expect(water(warm)).toBeLessThan(water(cold))
})

test('two pans of 30 × 40 cm at 0.7 g a square centimetre are 840 g each', () => {
  const pan = { is: 'rectangle' as const, length: 40, width: 30 }
  const made = {
    by: 'pans' as const,
    pieces: 2,
    pan,
    gramsPerSquareCentimetre: 0.7,
    lossPercent: 0,
  }
  const card = houseCard(adopted(62), 'Club flatbread', flatbread.kitchen, { made })
  expect(card.pieceGrams).toBeCloseTo(840, 9)
  expect(card.doughGrams).toBeCloseTo(1680, 9)
})

test('a level of a time factor takes its own method along', () => {
  const [level] = plan.levels
  const proof = plan.steps.find(({ kind }) => kind === 'proof') ?? plan.steps[0]
  if (!level || !proof) throw new Error('no level or step')
  const acts = { on: 'proof-time' as const, stepId: proof.id }
  const timed = { ...plan, factor: { ...plan.factor, acts, unitOfMeasure: 'min' } }
  const made = adoptLevel(timed, { ...level, value: 75 }, restsOn, when)
  expect(made.ok && made.revision.steps.find(({ id }) => id === proof.id)?.waitSeconds).toBe(4500)
})

test('a revision that changes nothing makes none; another keeps the old one as it was', () => {
  const first = adopted(62)
  const house = houseShape.parse({
    id: 'h1',
    name: 'Club flatbread',
    createdAt: when.at,
    revisions: [first],
  })
  expect(revisedHouse(house, { ...first, at: first.at + 1 })).toBe(house)
  const next = {
    ...first,
    formula: adopted(plan.levels.find((one) => one.value !== 62)?.value ?? 0).formula,
    at: first.at + 1,
    note: 'softer',
  }
  const revised = revisedHouse(house, next)
  expect(revised.revisions).toEqual([first, next])
  expect(houseChanges(first, next)).toEqual(['formula'])
})

test('a yield is said in figures that a baker would say', () => {
  expect(yieldText({ by: 'flour', flourGrams: 490.875106 }, null)).toBe('490.9 g of flour')
  const pan = { is: 'circle' as const, diameter: 28 }
  const made = {
    by: 'pans' as const,
    pieces: 1,
    pan,
    gramsPerSquareCentimetre: 0.7,
    lossPercent: 0,
  }
  expect(yieldText(made, 431.0265)).toBe('one pan of 28 cm across, 431 g each')
})
