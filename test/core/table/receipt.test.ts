import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { clockOffset } from '@/core/table/clock-offset.ts'
import { counted, mostAhead, noReceipt, type Receipt, waiting } from '@/core/table/receipt.ts'

const taken = (counts: readonly number[], from: Receipt = noReceipt) =>
  counts.reduce((receipt, count) => {
    const found = counted(receipt, count)
    return found.ok ? found.receipt : receipt
  }, from)

describe('the receipt of a table', () => {
  test('a gap is told as missing, and filled by what comes later', () => {
    expect(taken([1, 2, 4, 6])).toEqual({ to: 6, missing: [3, 5] })
    expect(taken([1, 2, 4, 6, 5, 3])).toEqual({ to: 6, missing: [] })
  })

  test('what was taken in before changes nothing', () => {
    expect(counted({ to: 6, missing: [3] }, 4)).toEqual({ ok: false, reason: 'known' })
  })

  test('what is far ahead of a gap is left to come again', () => {
    expect(counted(noReceipt, mostAhead + 2)).toEqual({ ok: false, reason: 'too-far' })
    expect(counted(noReceipt, mostAhead + 1).ok).toBe(true)
  })

  test('an entry leaves the outbox by the receipt alone', () => {
    expect(waiting(noReceipt, 3)).toEqual([1, 2, 3])
    expect(waiting({ to: 6, missing: [3, 5] }, 8)).toEqual([3, 5, 7, 8])
    expect(waiting({ to: 6, missing: [] }, 6)).toEqual([])
  })

  test('in whatever order, however often entries come: each is taken once, and what waits is what never came', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.array(fc.nat(59)), (written, at) => {
        const came = at.map((each) => (each % written) + 1)
        const left = waiting(taken(came), written)
        const never = Array.from({ length: written }, (_, index) => index + 1).filter(
          (count) => !came.includes(count),
        )
        expect(left.toSorted((one, other) => one - other)).toEqual(never)
      }),
    )
  })
})

test('the offset of a clock is the least of the differences: what is over it was the way', () => {
  expect(clockOffset([])).toBeNull()
  // A phone one minute behind, ways of 20, 5 and 900 ms: by hand 60,005.
  expect(
    clockOffset([
      { writtenAt: 1000, arrivedAt: 61_020 },
      { writtenAt: 5000, arrivedAt: 65_005 },
      { writtenAt: 9000, arrivedAt: 69_900 },
    ]),
  ).toBe(60_005)
})
