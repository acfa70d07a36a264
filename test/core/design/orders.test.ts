import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chanceFrom, shuffled } from '@/core/design/chance.ts'
import { orderBalance } from '@/core/design/order-balance.ts'
import { servingOrders } from '@/core/design/serving-orders.ts'
import { williamsDesign } from '@/core/design/williams.ts'

const range = (size: number) => Array.from({ length: size }, (_, index) => index)

describe('orderBalance', () => {
  it('counts positions and predecessors of two orders by hand', () => {
    // Orders 0 1 2 and 0 2 1. Line 0 twice first; lines 1 and 2 once second, once third. Directly before:
    // 0→1, 1→2, 0→2, 2→1 once each; 1→0 and 2→0 never. Mean positions 1, (2+3)/2, (3+2)/2.
    const balance = orderBalance(
      [
        [0, 1, 2],
        [0, 2, 1],
      ],
      3,
    )
    expect(balance.timesAt).toEqual([
      [2, 0, 0],
      [0, 1, 1],
      [0, 1, 1],
    ])
    expect([balance.leastAt, balance.mostAt]).toEqual([0, 2])
    expect([balance.leastBefore, balance.mostBefore]).toEqual([0, 1])
    expect(balance.meanPositions).toEqual([1, 2.5, 2.5])
    expect(balance.even).toBe(false)
  })

  it('refuses a line that is not there', () => {
    expect(() => orderBalance([[0, 3]], 2)).toThrow()
  })
})

describe('servingOrders', () => {
  const drawn = (lines: number, count: number, seed: number, earlier: number[][] = []) =>
    servingOrders({
      chance: chanceFrom(seed, 1),
      labelling: shuffled(chanceFrom(seed, 0), range(lines)),
      count,
      earlier,
    })

  it('gives as many orders as asked, each of all lines', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 12 }),
        fc.integer({ min: 0, max: 30 }),
        fc.nat(),
        (lines, count, seed) => {
          const orders = drawn(lines, count, seed)
          expect(orders).toHaveLength(count)
          for (const order of orders) expect(order.toSorted((a, b) => a - b)).toEqual(range(lines))
        },
      ),
      { numRuns: 60 },
    )
  })

  it('is wholly even with a whole design or several', () => {
    for (const [lines, count] of [
      [4, 4],
      [5, 10],
      [6, 12],
      [7, 14],
    ] as const)
      expect(orderBalance(drawn(lines, count, 9), lines).even).toBe(true)
  })

  it('cancels a steady drift with two flights: the second is the first reversed', () => {
    for (const lines of range(11).map((index) => index + 2)) {
      const [one, other] = drawn(lines, 2, lines)
      expect(other).toEqual(one?.toReversed())
    }
  })

  it('completes the design over sessions, one flight at a time', () => {
    // Four lines have four rows; four sessions of one flight must use each once.
    const sofar: number[][] = []
    for (const session of range(4)) sofar.push(...drawn(4, 1, 5, sofar.slice(0, session)))
    const balance = orderBalance(sofar, 4)
    expect(balance.even).toBe(true)
  })

  it('draws the same again from the same seed, and every order of three lines from many seeds', () => {
    expect(drawn(5, 3, 77)).toEqual(drawn(5, 3, 77))
    const seen = new Set(range(300).map((seed) => drawn(3, 1, seed).join()))
    expect(seen.size).toBe(6)
  })

  it('stays fast and fair where trying all choices is too much', () => {
    // 11 lines have 22 rows; 9 of 22 is 497,420 choices. Best possible spread of the nine times a line appears
    // over 11 positions: at most once each, which a search by exchange must reach for positions or mean positions.
    const balance = orderBalance(drawn(11, 9, 3), 11)
    expect(balance.mostAt).toBeLessThanOrEqual(2)
    const means = balance.meanPositions
    expect(Math.max(...means) - Math.min(...means)).toBeLessThan(2)
  })
})

it('shuffles fairly: each of 24 orders within five standard deviations of its share', () => {
  // 2,400 shuffles, expectation 100 each, sd √(2400·(1/24)(23/24)) = 9.8.
  const counts = new Map<string, number>()
  for (const seed of range(2400)) {
    const key = shuffled(chanceFrom(seed, 4), range(4)).join()
    counts.set(key, (counts.get(key) ?? 0) + 1)
  }
  expect(counts.size).toBe(24)
  for (const count of counts.values()) expect(Math.abs(count - 100)).toBeLessThan(49)
})

it('has a Williams design of one row for one line, and none for none', () => {
  expect(williamsDesign(1)).toEqual([[0]])
  expect(() => williamsDesign(0)).toThrow()
  expect(() => williamsDesign(2.5)).toThrow()
})
