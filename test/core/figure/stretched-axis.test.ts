import { expect, test } from 'vitest'
import { stretchedAxis } from '@/core/figure/stretched-axis.ts'

const at = (...values: (number | null)[]) =>
  values.map((value, index) => ({ id: `l${index}`, value, label: String(value), control: false }))

test.each([
  { what: 'the first digit of a level', before: at(64, 70, 76), now: at(64, 7, 76), is: true },
  { what: 'a digit too many', before: at(64, 70, 76), now: at(64, 70, 760), is: true },
  { what: 'twice as long is not sudden', before: at(64, 70, 76), now: at(64, 70, 88), is: false },
  { what: 'within the axis', before: at(64, 70, 76), now: at(64, 66.5, 76), is: false },
  { what: 'a level more', before: at(64, 70), now: at(64, 70, 7), is: false },
  { what: 'a single level has no length', before: at(64), now: at(6), is: false },
  { what: 'equal levels have none either', before: at(64, 64), now: at(64, 6), is: false },
  { what: 'a number wiped out', before: at(64, 70, 76), now: at(64, null, 76), is: false },
  { what: 'options of a choice', before: at(null, null), now: at(null, null), is: false },
])('$what: $is', ({ before, now, is }) => {
  expect(stretchedAxis(before, now)).toBe(is)
})
