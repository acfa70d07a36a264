import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { describe, expect, test } from 'vitest'
import { gatherCells } from '@/core/statistics/block-model/cells.ts'
import { fitPolynomial } from '@/core/statistics/curve/polynomial-fit.ts'
import { vertexOf } from '@/core/statistics/curve/vertex.ts'
import {
  bootstrapLimits,
  startBootstrap,
  takeResamples,
} from '@/core/statistics/resampling/bootstrap-best.ts'
import { type CurveClusters, curveClusters } from '@/core/statistics/resampling/clusters.ts'
import { drawClusters, drawsIn } from '@/core/statistics/resampling/draw-clusters.ts'

const values = [58, 62, 66, 70, 74]

/** Ten tasters in two sessions; each has a curve of the own, turning at 60 + taster. */
function panel() {
  const rows: { y: number; block: number; level: number }[] = []
  for (let taster = 0; taster < 10; taster += 1) {
    for (let session = 0; session < 2; session += 1) {
      for (const [level, value] of values.entries()) {
        const y =
          8 - ((value - 60 - taster) / 6) ** 2 + 0.3 * Math.sin(7 * taster + 3 * session + level)
        rows.push({ y, block: taster, level })
      }
    }
  }
  return {
    y: rows.map(({ y }) => y),
    block: rows.map(({ block }) => block),
    level: rows.map(({ level }) => level),
    blockCount: 10,
    levelCount: 5,
  }
}

function clustersOf(...of: Parameters<typeof curveClusters>): CurveClusters {
  const found = curveClusters(...of)
  if (!found.ok) throw new Error(found.reason)
  return found
}

const own = Array.from({ length: 10 }, (_, i) => i)

describe('bootstrap of the best', () => {
  test('the sums of all clusters give the fit’s own vertex', () => {
    const rows = panel()
    const { sums, centre, scale, count } = clustersOf(rows, values, own)
    const [xx, xs, ss, xy, sy] = [0, 1, 2, 3, 4].map((j) =>
      Array.from({ length: count }, (_, i) => sums[5 * i + j] as number).reduce((a, b) => a + b, 0),
    ) as [number, number, number, number, number]
    const b = xy * ss - sy * xs
    const c = sy * xx - xy * xs
    const fit = fitPolynomial(gatherCells(rows), values, 2)
    if (!fit.ok) throw new Error(fit.reason)
    const vertex = vertexOf(fit)
    if (!vertex.ok) throw new Error(vertex.reason)
    expect(centre - (scale * b) / (2 * c)).toBeCloseTo(vertex.vertex, 9)
  })

  test('the same seed gives the same limits, in one go or in slices', () => {
    const clusters = clustersOf(panel(), values, own)
    const whole = startBootstrap(clusters, 2000)
    takeResamples(whole, drawClusters(xoroshiro128plus(7), 10, 2000))
    const sliced = startBootstrap(clusters, 2000)
    const random = xoroshiro128plus(7)
    for (const slice of [1, 499, 1000, 500]) takeResamples(sliced, drawClusters(random, 10, slice))
    expect(bootstrapLimits(sliced)).toEqual(bootstrapLimits(whole))
  })

  test('equal curves turning at 60 + taster: limits near the normal ones of the mean of ten', () => {
    // All curves have one curvature, so a resample's vertex is the mean of the drawn tasters' (noise aside): 64.5 on average,
    // standard error √((10² − 1)/12/10) = 0.908; 95 % within about 64.5 ± 1.78 (binomial-like, so loosely).
    const bootstrap = startBootstrap(clustersOf(panel(), values, own), 10_000)
    takeResamples(bootstrap, drawClusters(xoroshiro128plus(42), 10, 10_000))
    const found = bootstrapLimits(bootstrap)
    if (!found.ok) throw new Error(found.reason)
    expect(found.low).toBeGreaterThan(62.4)
    expect(found.low).toBeLessThan(63.1)
    expect(found.high).toBeGreaterThan(65.9)
    expect(found.high).toBeLessThan(66.6)
    expect(found).toMatchObject({ resamples: 10_000, shareWithTop: 1, shareWithoutCurve: 0 })
  })

  test('two clusters, counted by hand: AA, AB, BA, BB', () => {
    const y = [0, 1, 0, 0, 1.5, 1]
    const rows = {
      y,
      block: [0, 0, 0, 1, 1, 1],
      level: [0, 1, 2, 0, 1, 2],
      blockCount: 2,
      levelCount: 3,
    }
    // A: 0, 1, 0 turns at 2. B: 0, 1.5, 1 has second difference −2 too and slope 0.5 in the middle: it turns at 2.25.
    // A mixed draw averages the two slopes over one curvature: 2.125.
    const bootstrap = startBootstrap(clustersOf(rows, [1, 2, 3], [0, 1]), 400)
    takeResamples(bootstrap, drawClusters(xoroshiro128plus(3), 2, 400))
    const seen = new Set(Array.from(bootstrap.vertices, (vertex) => vertex.toFixed(9)))
    expect(seen).toEqual(new Set(['2.000000000', '2.125000000', '2.250000000']))
  })

  test.each([2, 3, 8, 9, 64, 65])(
    'of %i clusters each is drawn as often, beside each other',
    (count) => {
      const drawn = drawClusters(xoroshiro128plus(11), count, 20_000)
      expect(drawn.length).toBe(20_000 * drawsIn(count))
      const times = Array.from({ length: count }, () => 0)
      const besides = Array.from({ length: count }, () => 0)
      for (const one of drawn) {
        const [first, second] = [Math.floor(one / count) - 1, one % count]
        times[second] = (times[second] as number) + 1
        if (first < 0) continue
        times[first] = (times[first] as number) + 1
        if (first === second) besides[first] = (besides[first] as number) + 1
      }
      // As many draws as there are clusters in every resample: 20,000 each, give or take four standard deviations.
      for (const n of times) expect(Math.abs(n - 20_000)).toBeLessThan(4 * Math.sqrt(20_000))
      const pairs = 20_000 * (count - drawsIn(count))
      for (const n of besides)
        expect(Math.abs(n - pairs / count ** 2)).toBeLessThan(
          4.5 * Math.sqrt(pairs / count ** 2) + 1,
        )
    },
  )

  test('sessions as clusters of several blocks', () => {
    const rows = panel()
    const pairs = clustersOf(
      rows,
      values,
      own.map((taster) => Math.floor(taster / 2)),
    )
    expect(pairs.count).toBe(5)
    const all = clustersOf(rows, values, own)
    const total = (one: CurveClusters) => one.sums.reduce((sum, value) => sum + value, 0)
    expect(total(pairs)).toBeCloseTo(total(all), 9)
  })

  test('what cannot be drawn has a reason', () => {
    const rows = panel()
    expect(
      curveClusters(
        rows,
        values,
        own.map(() => 0),
      ),
    ).toEqual({ ok: false, reason: 'too-few-clusters' })
    expect(curveClusters(rows, [1, 2, 1, 2, 1], own)).toEqual({
      ok: false,
      reason: 'needs-three-levels',
    })
    const level = { ...rows, y: rows.level.map((code) => 2 * code) }
    const straight = startBootstrap(clustersOf(level, values, own), 50)
    takeResamples(straight, drawClusters(xoroshiro128plus(1), 10, 50))
    expect(bootstrapLimits(straight)).toEqual({ ok: false, reason: 'no-resample-had-a-best' })
  })

  test('more draws than there is room for are a programmer’s mistake', () => {
    const bootstrap = startBootstrap(clustersOf(panel(), values, own), 10)
    expect(() => takeResamples(bootstrap, drawClusters(xoroshiro128plus(1), 10, 11))).toThrow(
      RangeError,
    )
  })
})
