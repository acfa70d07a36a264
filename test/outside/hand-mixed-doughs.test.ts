import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { doughCelsius, waterCelsius } from '@/core/dough-temperature/heat-balance.ts'
import { mixBodies } from '@/core/dough-temperature/heat-part.ts'
import { mixingHeats } from '@/core/dough-temperature/mixing-heat.ts'
import { wettingHeat } from '@/core/dough-temperature/wetting-heat.ts'
import type { Formula } from '@/core/formula/formula-record.ts'

interface Asked {
  name: string
  kind: 'dough' | 'water'
  F_: number
  W: number
  Tf: number
  Tr: number
  Tw?: number
  want?: number
  M?: number
  /** Flour kg, water kg, °C. */
  pre?: [number, number, number]
  salt?: number
  /** kg, kJ/(kg K), °C. */
  bowl?: [number, number, number]
  answer: number
}
interface Dough {
  id: string
  hydration: number
  Tflour: number
  Troom: number
  Twater: number
  Tdough_published: number
  preferment: { flour_share: number; hydration: number; T: number } | null
  used_in_fit: boolean
  Tdough_model: number
}
const { tests, cases, fit } = JSON.parse(
  readFileSync(new URL('reference/handmix.json', import.meta.url), 'utf8'),
) as { tests: Asked[]; cases: Dough[]; fit: { rms_adopted: number } }

/** Dry flour, added water, salt and a preferment in kg, as a formula; the reference takes salt at the flour's temperature. */
function formulaOf({ F_, W, Tf, pre = [0, 0, 0], salt = 0 }: Asked): Formula {
  const [preFlour, preWater, celsius] = pre
  const all = F_ + preFlour
  return {
    ingredients: [
      { id: 'flour', name: 'flour', kind: 'flour', percent: 100 },
      { id: 'water', name: 'water', kind: 'water', percent: ((W + preWater) / all) * 100 },
      { id: 'salt', name: 'salt', kind: 'salt', percent: (salt / all) * 100, celsius: Tf },
    ],
    preferments:
      preFlour > 0
        ? [
            {
              ...{ id: 'starter', name: 'starter', kind: 'starter' },
              ...{ flourSharePercent: (preFlour / all) * 100, celsius },
              parts: [
                { ingredientId: 'flour', percent: 100 },
                { ingredientId: 'water', percent: (preWater / preFlour) * 100 },
              ],
            },
          ]
        : [],
    batchSize: { by: 'flour', flourGrams: all * 1000 },
  }
}

function bodiesOf(asked: Asked) {
  const { Tf, Tr, bowl, M } = asked
  const own = bowl ? { bowl: { grams: bowl[0] * 1000, heat: bowl[1], celsius: bowl[2] } } : {}
  return mixBodies(formulaOf(asked), {
    ...{ flourCelsius: Tf, roomCelsius: Tr, roomHeat: mixingHeats.hand.roomHeat },
    ...own,
    moistureOf: () => M,
  })
}

const { kilojoulesPerKilogram: byHand } = mixingHeats.hand

test.each(tests)('$name', (asked) => {
  const bodies = bodiesOf(asked)
  const found =
    asked.kind === 'dough'
      ? doughCelsius(bodies, asked.Tw ?? Number.NaN, byHand)
      : waterCelsius(bodies, asked.want ?? Number.NaN, byHand)
  expect(found).toBeCloseTo(asked.answer, 3)
})

/** A published dough per kg of flour. */
function published({ hydration, Tflour, Troom, Twater, preferment }: Dough): Asked {
  const share = preferment?.flour_share ?? 0
  const preWater = share * (preferment?.hydration ?? 0)
  return {
    ...{ name: '', kind: 'dough', answer: 0, F_: 1 - share, W: hydration - preWater },
    ...{ Tf: Tflour, Tr: Troom, Tw: Twater },
    ...(preferment ? { pre: [share, preWater, preferment.T] as [number, number, number] } : {}),
  }
}

test('the eleven published hand-mixed doughs come out as the fit says, 0.46 °C rms and never 0.8 off', () => {
  const fitted = cases.filter(({ used_in_fit }) => used_in_fit)
  const off = fitted.map((one) => {
    const asked = published(one)
    const found = doughCelsius(bodiesOf(asked), one.Twater, byHand) ?? Number.NaN
    expect(found, one.id).toBeCloseTo(one.Tdough_model, 1)
    return found - one.Tdough_published
  })
  expect(off).toHaveLength(11)
  const rms = Math.sqrt(off.reduce((sum, each) => sum + each ** 2, 0) / off.length)
  expect(rms).toBeCloseTo(fit.rms_adopted, 2)
  expect(Math.max(...off.map(Math.abs))).toBeLessThan(0.8)
})

test.each([
  [10, 19.9],
  [11, 16.6],
  [11.5, 15.1],
  [12, 13.8],
  [13, 11.4],
  [13.5, 10.4],
  [14, 9.4],
  [15, 7.7],
])('flour of %d %% moisture gives %d kJ/kg when wetted (computed table)', (moisture, heat) => {
  expect(wettingHeat(moisture)).toBeCloseTo(heat, 1)
})
