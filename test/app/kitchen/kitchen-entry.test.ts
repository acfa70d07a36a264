import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { fieldProblem, kitchenEntry, typedFrom } from '@/app/kitchen/kitchen-entry.ts'
import { kitchenChapters } from '@/app/kitchen/kitchen-fields.ts'
import type { KitchenKind } from '@/core/kitchen/kitchen-record.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'

function chapterOf(kind: KitchenKind) {
  const chapter = kitchenChapters.find((each) => each.kind === kind)
  if (!chapter) throw new Error(`no chapter for ${kind}`)
  return chapter
}

for (const thing of wholeTrialOf().kitchen)
  test(`changing nothing of ${thing.kind} ${thing.id} keeps it as it was`, () => {
    const chapter = chapterOf(thing.kind)
    expect(kitchenEntry(chapter, thing.id, typedFrom(chapter, thing), [])).toEqual({
      ok: true,
      thing,
    })
  })

test('a decimal comma is read, and what is not known stays out of the record', () => {
  const typed = { name: ' Pocket scale ', resolutionGrams: '0,01', capacityGrams: '200 g' }
  expect(kitchenEntry(chapterOf('scale'), 's', typed, [])).toEqual({
    ok: true,
    thing: {
      id: 's',
      kind: 'scale',
      name: 'Pocket scale',
      resolutionGrams: 0.01,
      capacityGrams: 200,
    },
  })
})

test('each field that cannot stand has its own message', () => {
  const typed = { name: '', resolutionGrams: 'fine', capacityGrams: '-2' }
  const entry = kitchenEntry(chapterOf('scale'), 's', typed, [])
  expect(entry.ok ? [] : Object.keys(entry.problems)).toEqual([
    'name',
    'resolutionGrams',
    'capacityGrams',
  ])
})

test('a scale weighs more than its step, a tap runs warmer than coldest', () => {
  const scale = { name: 'S', resolutionGrams: '5', capacityGrams: '5' }
  const tap = { name: 'T', coldestCelsius: '12', warmestCelsius: '8' }
  expect(kitchenEntry(chapterOf('scale'), 's', scale, [])).toMatchObject({ ok: false })
  expect(kitchenEntry(chapterOf('tap'), 't', tap, [])).toMatchObject({ ok: false })
})

test('two tasters cannot share initials, whatever their case', () => {
  const others = [{ id: 'one', kind: 'taster', initials: 'RV' } as const]
  expect(kitchenEntry(chapterOf('taster'), 'two', { initials: 'rv' }, others)).toMatchObject({
    ok: false,
    problems: { initials: expect.any(String) },
  })
  expect(kitchenEntry(chapterOf('taster'), 'one', { initials: 'RV' }, others).ok).toBe(true)
})

const inFahrenheit = { temperature: 'fahrenheit', mass: 'gram' } as const

// 41 °F = 5 °C, 0 °F = −17.78 °C to a hundredth; a spread of 0.9 °F is half a degree Celsius.
test('temperatures typed in °F are kept in °C, differences without the offset', () => {
  const fridge = { name: 'Fridge', celsius: '41', freezerCelsius: '0 °F' }
  expect(kitchenEntry(chapterOf('fridge'), 'f', fridge, [], inFahrenheit)).toMatchObject({
    ok: true,
    thing: { celsius: 5, freezerCelsius: -17.78 },
  })
  const probe = { name: 'Probe', spreadCelsius: '0.9' }
  expect(kitchenEntry(chapterOf('thermometer'), 'p', probe, [], inFahrenheit)).toMatchObject({
    ok: true,
    thing: { spreadCelsius: 0.5 },
  })
})

test('a bound is said in the unit that was typed', () => {
  const typed = { name: 'Fridge', celsius: '2000' }
  const entry = kitchenEntry(chapterOf('fridge'), 'f', typed, [], inFahrenheit)
  // −5 °C = 23 °F, 20 °C = 68 °F.
  const celsius = 'Temperature: give a number from 23 to 68 °F. Check that it is meant in °F.'
  expect(entry).toEqual({ ok: false, problems: { celsius } })
})

test('changing nothing in °F keeps what was typed in °F', () => {
  const typed = { name: 'Tap', coldestCelsius: '52.3', warmestCelsius: '118' }
  const entry = kitchenEntry(chapterOf('tap'), 't', typed, [], inFahrenheit)
  if (!entry.ok) throw new Error('the tap can stand')
  expect(typedFrom(chapterOf('tap'), entry.thing, inFahrenheit)).toEqual(typed)
})

test.each([
  ['tap', 'coldestCelsius', ['-20', '-0.1'], ['0', '12']],
  ['tap', 'warmestCelsius', ['81', '300'], ['80', '45']],
  ['fridge', 'celsius', ['-6', '500'], ['-5', '4', '20']],
  ['fridge', 'freezerCelsius', ['60', '0.5', '-41'], ['0', '-18']],
  ['oven', 'maxCelsius', ['20', '701'], ['250', '500']],
  ['flour', 'moisturePercent', ['100', '4', '26'], ['5', '14', '25']],
] as const)('%s: %s has ends, and says its name and them', (kind, key, refused, taken) => {
  const field = chapterOf(kind).fields.find((one) => one.key === key)
  if (!field) throw new Error('no such field')
  for (const text of refused)
    expect(fieldProblem(field, text)).toContain(
      `${field.label}: give a number from ${String(field.least).replace('-', '−')} to ${field.most} ${field.unit}.`,
    )
  for (const text of taken) expect(fieldProblem(field, text)).toBeUndefined()
})

test('the kitchens of the sample trials pass every check', () => {
  for (const name of readdirSync('trials').filter((file) => file.endsWith('.json'))) {
    const { kitchen } = JSON.parse(readFileSync(`trials/${name}`, 'utf8'))
    for (const thing of kitchen)
      expect(
        kitchenEntry(chapterOf(thing.kind), thing.id, typedFrom(chapterOf(thing.kind), thing), []),
      ).toEqual({ ok: true, thing })
  }
})

// 1 oz = 28.349523125 g, exact: a pocket scale of 0.005 oz up to 7 oz; what carries its own unit is taken as it says.
test('weights typed in ounces are kept in grams', () => {
  const inOunces = { temperature: 'celsius', mass: 'ounce' } as const
  const typed = { name: 'Pocket', resolutionGrams: '0.005', capacityGrams: '200 g' }
  const entry = kitchenEntry(chapterOf('scale'), 's', typed, [], inOunces)
  if (!entry.ok || entry.thing.kind !== 'scale') throw new Error('the scale can stand')
  expect(entry.thing.resolutionGrams).toBeCloseTo(0.141747615625, 9)
  expect(entry.thing.capacityGrams).toBeCloseTo(200, 5)
  expect(typedFrom(chapterOf('scale'), entry.thing, inOunces)).toMatchObject({
    ...{ resolutionGrams: '0.005', capacityGrams: '7.0548' },
  })
})
