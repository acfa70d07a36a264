import fc from 'fast-check'
import { expect, test } from 'vitest'
import { oddWeight } from '@/core/session/press/odd-weight.ts'
import type { WeighLine } from '@/core/weighing/batch-weights.ts'
import { oddWeightText } from '@/core/wording/bench/odd-weight-text.ts'

/** A line of a weigh sheet for a hydration: flour counts below the line, water above, salt in neither. */
const line = (key: string, grams: number, above: number, below: number) =>
  ({
    ...{ key, ingredientId: key, prefermentId: null, name: key, what: 'ingredient', grams },
    ...{ resolutionGrams: 1, share: { above, below } },
  }) as unknown as WeighLine
// 350 g of water on 500 g of flour: 70 %.
const batch = {
  lines: [line('flour', 500, 0, 1), line('water', 350, 1, 0), line('salt', 10, 0, 0)],
}
const levels = [70, 74].map((value) => ({ value })) as never
const logged = (ingredientId: string, grams: number) => ({
  ingredientId,
  grams,
  prefermentId: null,
})
const reading = (key: string, grams: number, inBowl: ReturnType<typeof logged>[] = []) =>
  oddWeight({ plan: { levels }, batch, logged: inBowl, key, grams })

test('a reading within a tenth of the step between two levels is kept as it is; one beyond it asks', () => {
  // 4 points between the levels: a tenth is 0.4 points, on 500 g of flour 2 g of water.
  expect(reading('water', 351)).toBeNull()
  expect(reading('water', 352)).toBeNull()
  expect(reading('water', 353)).toMatchObject({ offGrams: 3, level: { planned: 70, would: 70.6 } })
  // Salt is no part of a hydration: it asks from a twentieth of its weight on, and the scale shows whole grams.
  expect(reading('salt', 11)).toBeNull()
  expect(reading('salt', 12)).toMatchObject({ offGrams: 2, level: null })
})

test('too little says what to add, too much which other weights bring the level back', () => {
  expect(reading('water', 300)).toMatchObject({ offGrams: -50, bringsBack: [] })
  // 385 g of water are 70 % of 550 g of flour: 50 g more.
  const odd = reading('water', 385)
  expect(odd?.bringsBack).toEqual([{ key: 'flour', moreGrams: expect.closeTo(50, 9) }])
  // 450 g of flour would want 315 g of water: 35 g less, as long as it is not in the bowl.
  const flour = reading('flour', 550)
  expect(flour?.bringsBack).toEqual([{ key: 'water', moreGrams: expect.closeTo(35, 9) }])
  const text = oddWeightText(
    odd as never,
    'water',
    (key) => key,
    (level) => `${level} %`,
  )
  expect(text.mend).toBe('35.0 g too much. The level comes back with 50.0 g more of flour.')
  expect(text.beside).toBe('As it stands the level would be 77.0 %, planned 70.0 %.')
})

test('property: with what it names, the dough has the planned level again', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1.05, max: 3, noNaN: true }),
      fc.constantFrom('flour', 'water'),
      (times, key) => {
        const grams = (key === 'flour' ? 500 : 350) * times
        for (const { key: other, moreGrams } of reading(key, grams)?.bringsBack ?? []) {
          const now = { flour: 500, water: 350, [key]: grams }
          const mended = { ...now, [other]: now[other as 'flour'] + moreGrams }
          expect((100 * mended.water) / mended.flour).toBeCloseTo(70, 6)
        }
      },
    ),
  )
})

test('less of a weight is named only while it is not in the bowl', () => {
  // A salt trial: 12 g too much salt would want more flour, or nothing less.
  const salted = {
    lines: [line('flour', 500, 0, 1), line('salt', 10, 1, 0), line('sea', 10, 1, 0)],
  }
  const ask = (inBowl: ReturnType<typeof logged>[]) =>
    oddWeight({ plan: { levels }, batch: salted, logged: inBowl, key: 'salt', grams: 15 })
  // Two salts of 10 g on 500 g: 4 %. With 15 g of one the other wants 5 g less, or the flour 125 g more (25 / 625).
  const step = { levels: [4, 5].map((value) => ({ value })) as never }
  expect(
    oddWeight({ plan: step, batch: salted, logged: [], key: 'salt', grams: 15 })?.bringsBack,
  ).toEqual([
    { key: 'flour', moreGrams: expect.closeTo(125, 9) },
    { key: 'sea', moreGrams: expect.closeTo(-5, 9) },
  ])
  expect(
    oddWeight({ plan: step, batch: salted, logged: [logged('sea', 10)], key: 'salt', grams: 15 })
      ?.bringsBack,
  ).toEqual([{ key: 'flour', moreGrams: expect.closeTo(125, 9) }])
  expect(ask([])?.level?.would).toBeCloseTo(5, 9)
})
