import { expect, test } from 'vitest'
import { kitchenEntry, typedFrom } from '@/app/kitchen/kitchen-entry.ts'
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
    expect(kitchenEntry(chapterOf(thing.kind), thing.id, typedFrom(thing), [])).toEqual({
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
