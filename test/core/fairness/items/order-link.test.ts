import { describe, expect, it } from 'vitest'
import { orderLink } from '@/core/fairness/items/order-link.ts'

const levels = [55, 61, 67].map((value, at) => ({
  ...{ id: `l${at}`, value, label: String(value), control: false },
}))
const options = levels.map((level) => ({ ...level, value: null }))
const stands = (...orders: number[][]) =>
  orders.flatMap((order) => order.map((level, position) => ({ level, position })))

describe('orderLink', () => {
  it('is 1 when the order rises with the level, and 0 once the next session reverses it', () => {
    expect(orderLink(levels, stands([0, 1, 2]))).toEqual({ size: 1, against: 'level' })
    expect(orderLink(levels, stands([0, 1, 2], [2, 1, 0]))?.size).toBeCloseTo(0, 12)
  })

  it('sees a middle that always comes first', () => {
    // Positions of 55, 61, 67: 1, 0, 2. r with L = 1/√(2·2) = 0.5; with (L − 61)²: 36, 0, 36 against 1, 0, 2: 0.866.
    const link = orderLink(levels, stands([1, 0, 2]))
    expect(link?.against).toBe('middle')
    expect(link?.size).toBeCloseTo(Math.sqrt(0.75), 9)
  })

  it('takes the share of the spread between options of a choice', () => {
    expect(orderLink(options, stands([2, 0, 1]))).toEqual({ size: 1, against: 'option' })
    // Positions 0 1 2 and 1 0 2: means 0.5, 0.5, 2; between 2·(0.25+0.25+1) = 3 of 4.
    expect(orderLink(options, stands([0, 1, 2], [1, 0, 2]))?.size).toBeCloseTo(Math.sqrt(0.75), 9)
  })

  it('is nothing where nothing varies', () => {
    expect(orderLink(levels, [])).toBeNull()
    expect(orderLink(levels, stands([0]))).toBeNull()
  })
})
