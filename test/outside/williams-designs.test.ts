import { describe, expect, it } from 'vitest'
import { orderBalance } from '@/core/design/order-balance.ts'
import { williamsDesign } from '@/core/design/williams.ts'
import reference from './reference/designs.json'

// Williams (1949); properties and the published squares of reference/designs.json, whose n = 3 and n = 4 squares are from
// memory there and verified by script. Any array with the properties is right, so the squares are compared by property.
describe('Williams designs', () => {
  for (const lines of Array.from({ length: 11 }, (_, index) => index + 2))
    it(`of ${lines}: rows are permutations, positions and neighbours equally often`, () => {
      const rows = williamsDesign(lines)
      const times = lines % 2 === 0 ? 1 : 2
      expect(rows).toHaveLength(lines * times)
      for (const row of rows) expect(new Set(row).size).toBe(lines)
      const balance = orderBalance(rows, lines)
      expect([balance.leastAt, balance.mostAt]).toEqual([times, times])
      expect([balance.leastBefore, balance.mostBefore]).toEqual([times, times])
    })

  for (const { n, sequences, one_construction, verified } of reference.designs)
    it(`of ${n} agrees with the published square in size and counts`, () => {
      const published = one_construction.map((row) => row.map((line) => line - 1))
      const ours = orderBalance(williamsDesign(n), n)
      expect(williamsDesign(n)).toHaveLength(sequences)
      const theirs = orderBalance(published, n)
      expect(ours.timesAt).toEqual(theirs.timesAt)
      expect(ours.timesBefore).toEqual(theirs.timesBefore)
      expect(ours.mostAt).toBe(verified.times_in_each_column)
      expect(ours.mostBefore).toBe(verified.ordered_neighbour_count)
    })
})
