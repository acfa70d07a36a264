import { describe, expect, it } from 'vitest'
import { type Comparison, verdictOf } from '@/core/findings/judged/verdict.ts'

const names = [60, 65, 70]
const settled = {
  a: 0,
  b: 1,
  difference: 0.1,
  low: -0.4,
  high: 0.6,
  low90: -0.3,
  high90: 0.5,
  p: 0.9,
}
const beyond = { a: 0, b: 2, difference: 2, low: 1.1, high: 2.9, low90: 1.2, high90: 2.8, p: 0.001 }
const unsure = { a: 1, b: 2, difference: 1, low: 0.2, high: 1.8, low90: 0.3, high90: 1.7, p: 0.02 }
const leaning = { a: 1, b: 2, difference: 1, low: -0.2, high: 2.2, low90: 0, high90: 2, p: 0.1 }
const open = { a: 0, b: 2, difference: 0.9, low: -1, high: 2.8, low90: -0.8, high90: 2.6, p: 0.5 }

const cases: [string, Comparison[], number | null, boolean, string][] = [
  ['one interval wholly beyond the margin', [settled, beyond], 1, true, 'matters'],
  [
    'one wholly beyond it below',
    [{ ...beyond, difference: -2, low: -2.9, high: -1.1 }],
    1,
    true,
    'matters',
  ],
  ['an interval that touches the margin', [{ ...beyond, low: 1 }], 1, true, 'differs'],
  ['the same without a margin', [settled, beyond], null, true, 'differs'],
  ['one that excludes 0 but not the margin', [settled, unsure], 1, true, 'differs'],
  ['all 90 % intervals inside the margin', [settled], 1, true, 'too-small'],
  ['all inside, no margin', [settled], null, true, 'not-settled'],
  [
    'one 90 % interval reaching the margin',
    [settled, { ...settled, high90: 1 }],
    1,
    false,
    'not-settled',
  ],
  [
    'significant although inside the margin',
    [{ ...settled, low: 0.1, p: 0.01 }],
    1,
    true,
    'differs',
  ],
  ['an 80 % interval that excludes 0', [leaning], 1, true, 'leans'],
  ['the same on too little', [leaning], 1, false, 'not-settled'],
  ['nothing', [open], 1, true, 'not-settled'],
]

describe('the verdict', () => {
  it.each(cases)('on %s', (_, comparisons, margin, mayLean, kind) => {
    expect(verdictOf(comparisons, names, margin, mayLean).kind).toBe(kind)
  })

  it('names the lower level first also where the control is the higher one', () => {
    // against the control 70: the mean of 60 less that of 70 is 2, so from 60 to 70 it is -2
    const against = { ...beyond, a: 2, b: 0 }
    expect(verdictOf([against], names, 1, true)).toEqual({
      kind: 'matters',
      difference: -2,
      low: -2.9,
      high: -1.1,
      margin: 1,
      between: [60, 70],
    })
  })

  it('names the pair with the largest difference, whichever way', () => {
    const down = { ...beyond, difference: -2.5, low: -3.4, high: -1.6 }
    expect(verdictOf([settled, beyond, down], names, 1, true)).toEqual({
      kind: 'matters',
      difference: -2.5,
      low: -3.4,
      high: -1.6,
      margin: 1,
      between: [60, 70],
    })
  })
})
