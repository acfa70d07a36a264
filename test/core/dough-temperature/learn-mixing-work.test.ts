import { expect, test } from 'vitest'
import { doughCelsius } from '@/core/dough-temperature/heat-balance.ts'
import { mixBodies } from '@/core/dough-temperature/heat-part.ts'
import { learnMixingWork, workAtLevel } from '@/core/dough-temperature/learn-mixing-work.ts'
import type { Formula } from '@/core/formula/formula-record.ts'

/** A dough of a level that came out as its work and room's share say, but for `off` degrees of the thermometer. */
function logged(level: number, work: number, change: { off?: number; room?: number } = {}) {
  const { off = 0, room = 21 } = change
  const formula: Formula = {
    ingredients: [
      { id: 'flour', name: 'flour', kind: 'flour', percent: 100 },
      { id: 'water', name: 'water', kind: 'water', percent: level },
    ],
    preferments: [],
    batchSize: { by: 'flour', flourGrams: 1000 },
  }
  const bodies = mixBodies(formula, { flourCelsius: room, roomCelsius: room, roomHeat: 3.2 })
  return {
    bodies,
    waterCelsius: 28,
    doughCelsius: (doughCelsius(bodies, 28, work) ?? 0) + off,
    level,
  }
}

function learned(mixes: ReturnType<typeof logged>[]) {
  const found = learnMixingWork(mixes)
  if (!found.ok) throw new Error(found.reason)
  return found
}

test('the work that made the doughs is learned, with its spread', () => {
  const found = learned([logged(60, 5), logged(70, 6), logged(80, 7), logged(80, 7)])
  // works 5, 6, 7, 7: mean 6.25, sd √(2.75/3)
  expect(found.kilojoulesPerKilogram).toBeCloseTo(6.25, 8)
  expect(found.sdKilojoulesPerKilogram).toBeCloseTo(Math.sqrt(2.75 / 3), 8)
  expect(found.batches).toBe(4)
  expect(learnMixingWork([])).toEqual({ ok: false, reason: 'no-logged-mix' })
})

test('a slope that stands clear of its error is kept, and held at the logged levels', () => {
  const found = learned([60, 65, 70, 75, 80].map((level) => logged(level, 6 + 0.3 * (level - 70))))
  expect(found.slope?.perLevel).toBeCloseTo(0.3, 8)
  expect(workAtLevel(found, 75)).toBeCloseTo(7.5, 8)
  expect(workAtLevel(found, 95)).toBeCloseTo(9, 8)
  expect(workAtLevel(found, 50)).toBeCloseTo(3, 8)
})

test('a slope within twice its error is no slope: three levels, a thermometer half a degree off either way', () => {
  const offs = [0.5, -0.5, 0.5, -0.5, 0.5, 0.2]
  const levels = [60, 60, 70, 70, 80, 80]
  const found = learned(levels.map((level, index) => logged(level, 2, { off: offs[index] ?? 0 })))
  expect(found.slope).toBeNull()
  expect(workAtLevel(found, 80)).toBe(found.kilojoulesPerKilogram)
})

test('four doughs tell no slope', () => {
  const found = learned([60, 65, 70, 75].map((level) => logged(level, 6 + 0.3 * (level - 70))))
  expect(found.slope).toBeNull()
})

test('the room’s share is learned once the doughs stand 5 °C apart against their rooms, and not before', () => {
  // made with K 4.0 where 3.2 is taken: (4.0 − 3.2) kJ/K a kg to the room
  const withMore = (room: number) => {
    const { bodies, waterCelsius, level } = logged(65, 0, { room })
    const more = { ...bodies.room, kilojoulesPerKelvin: 4 }
    return {
      ...{ bodies, waterCelsius, level },
      doughCelsius: doughCelsius({ ...bodies, room: more }, waterCelsius, -7) ?? 0,
    }
  }
  const far = learned([10, 14, 18, 24, 30].map(withMore))
  expect(far.roomHeatChange).toBeCloseTo(0.8, 8)
  expect(far.kilojoulesPerKilogram).toBeCloseTo(-7, 8)
  expect(learned([20, 21, 22, 23].map(withMore)).roomHeatChange).toBe(0)
})
