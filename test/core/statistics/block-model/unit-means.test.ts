import { describe, expect, test } from 'vitest'
import { unitMeans } from '@/core/statistics/block-model/unit-means.ts'

describe('marginal means of units', () => {
  test('a missing harsh taster does not lift a batch', () => {
    // Taster 1 is 2 harsher throughout. Unit 0: 8 and 6; unit 1: 5 and 3; unit 2: only the mild taster's 7.
    // Additive without error: taster gap 2, so unit 2 would have had 7 and 5: mean 6, not 7.
    const { means, groupCount } = unitMeans({
      y: [8, 6, 5, 3, 7],
      taster: [0, 1, 0, 1, 0],
      unit: [0, 0, 1, 1, 2],
      tasterCount: 2,
      unitCount: 3,
    })
    expect(means).toEqual([expect.closeTo(7, 12), expect.closeTo(4, 12), expect.closeTo(6, 12)])
    expect(groupCount).toBe(1)
  })

  test('complete scores give plain means', () => {
    const { means } = unitMeans({
      y: [1, 2, 3, 5],
      taster: [0, 1, 0, 1],
      unit: [0, 0, 1, 1],
      tasterCount: 2,
      unitCount: 2,
    })
    expect(means).toEqual([1.5, 4])
  })

  test('unconnected groups are told and solved apart', () => {
    // Tasters 0 and 1 share units 0 and 1; taster 2 alone has unit 3; unit 2 has no score.
    const found = unitMeans({
      y: [1, 3, 2, 9],
      taster: [0, 1, 0, 2],
      unit: [0, 0, 1, 3],
      tasterCount: 3,
      unitCount: 4,
    })
    // Taster 1 is 2 above taster 0: unit 0 has mean 2, unit 1 would have had 2 and 4.
    expect(found.means).toEqual([expect.closeTo(2, 12), expect.closeTo(3, 12), null, 9])
    expect(found.groups).toEqual([0, 0, null, 1])
    expect(found.groupCount).toBe(2)
  })
})
