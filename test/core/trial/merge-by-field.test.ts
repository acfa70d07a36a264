import fc from 'fast-check'
import { expect, test } from 'vitest'

const rising = (a: unknown, b: unknown) => (String(a) < String(b) ? -1 : 1)

import { mergeByField } from '@/core/trial/merge-by-field.ts'

const base = {
  question: 'How wet?',
  flights: 2,
  levels: [
    { id: 'a', value: 65 },
    { id: 'b', value: 70 },
  ],
}

test('what two windows changed in different fields is in the merged record', () => {
  const theirs = { ...base, question: 'How soft?' }
  const mine = { ...base, flights: 3 }
  expect(mergeByField(base, theirs, mine)).toEqual({
    ...{ value: { ...base, question: 'How soft?', flights: 3 }, conflicts: [] },
  })
})

test('what both changed differently stays as mine has it, and is named', () => {
  const merged = mergeByField(base, { ...base, flights: 4 }, { ...base, flights: 3 })
  expect(merged).toEqual({ value: { ...base, flights: 3 }, conflicts: ['/flights'] })
})

test('items of a list are told by their ids: changed here, added there, taken out here', () => {
  const theirs = { ...base, levels: [...base.levels, { id: 'c', value: 75 }] }
  const mine = { ...base, levels: [{ id: 'b', value: 71 }] }
  const levels = [
    { id: 'b', value: 71 },
    { id: 'c', value: 75 },
  ]
  expect(mergeByField(base, theirs, mine)).toEqual({ value: { ...base, levels }, conflicts: [] })
})

test('an item taken out there and changed here is a conflict and stays', () => {
  const theirs = { ...base, levels: base.levels.slice(1) }
  const mine = {
    ...base,
    levels: [
      { id: 'a', value: 66 },
      { id: 'b', value: 70 },
    ],
  }
  const merged = mergeByField(base, theirs, mine)
  expect(merged.conflicts).toEqual(['/levels/a'])
  expect(merged.value.levels.map((level) => level.value).toSorted(rising)).toEqual([66, 70])
})

test('the order of one side that moved items is taken', () => {
  const theirs = { ...base, levels: [...base.levels].reverse() }
  const mine = { ...base, question: 'Other?' }
  expect(mergeByField(base, theirs, mine).value.levels.map(({ id }) => id)).toEqual(['b', 'a'])
})

test('laws: an unchanged side gives the other; the two windows agree where nothing conflicts', () => {
  const record = fc.record({
    question: fc.string({ maxLength: 3 }),
    note: fc.option(fc.string({ maxLength: 2 }), { nil: undefined }),
    levels: fc.uniqueArray(
      fc.record({ id: fc.constantFrom('a', 'b', 'c', 'd'), value: fc.integer({ min: 0, max: 3 }) }),
      { selector: ({ id }) => id },
    ),
  })
  fc.assert(
    fc.property(record, record, record, (from, theirs, mine) => {
      expect(mergeByField(from, from, mine).value).toEqual(mine)
      expect(mergeByField(from, theirs, from).value).toEqual(theirs)
      const one = mergeByField(from, theirs, mine)
      const other = mergeByField(from, mine, theirs)
      expect([...one.conflicts].sort(rising)).toEqual([...other.conflicts].sort(rising))
      const sorted = ({ levels, ...rest }: typeof from) => ({
        ...rest,
        levels: [...levels].sort((a, b) => (a.id < b.id ? -1 : 1)),
      })
      if (one.conflicts.length === 0) expect(sorted(one.value)).toEqual(sorted(other.value))
    }),
  )
})
