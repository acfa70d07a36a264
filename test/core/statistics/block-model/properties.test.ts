import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { allPairs } from '@/core/statistics/block-model/all-pairs.ts'
import { gatherCells } from '@/core/statistics/block-model/cells.ts'
import { fitLevels, type LevelFit } from '@/core/statistics/block-model/level-fit.ts'
import { levelMeans } from '@/core/statistics/block-model/level-means.ts'
import { fitPolynomial } from '@/core/statistics/curve/polynomial-fit.ts'
import { slopeOf } from '@/core/statistics/curve/slope.ts'
import { vertexOf } from '@/core/statistics/curve/vertex.ts'
import { friedman } from '@/core/statistics/ranks/friedman.ts'
import { page } from '@/core/statistics/ranks/page.ts'
import { rankBlocks } from '@/core/statistics/ranks/rank-blocks.ts'

/** A panel of scores with some cells missing, every level connected through a first taster who scored all. */
const panels = fc
  .record({
    tasters: fc.integer({ min: 3, max: 7 }),
    levels: fc.integer({ min: 3, max: 5 }),
    scores: fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 40, maxLength: 40 }),
    missing: fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }),
  })
  .map(({ tasters, levels, scores, missing }) => {
    const rows: { y: number; block: number; level: number }[] = []
    for (let block = 0; block < tasters; block += 1) {
      for (let level = 0; level < levels; level += 1) {
        const i = block * levels + level
        const noise = Math.sin(1 + 17 * i) / 7
        if (block > 1 && missing[i]) continue
        rows.push({ y: (scores[i] as number) / 10 + noise, block, level })
      }
    }
    const used = [...new Set(rows.map(({ block }) => block))]
    return {
      rows: rows.map((row) => ({ ...row, block: used.indexOf(row.block) })),
      blockCount: used.length,
      levelCount: levels,
    }
  })

type Panel = typeof panels extends fc.Arbitrary<infer One> ? One : never

function tableOf({ rows, blockCount, levelCount }: Panel) {
  return {
    y: rows.map(({ y }) => y),
    block: rows.map(({ block }) => block),
    level: rows.map(({ level }) => level),
    blockCount,
    levelCount,
  }
}

function fitOf(panel: Panel): LevelFit {
  const fit = fitLevels(tableOf(panel))
  if (!fit.ok) throw new Error(fit.reason)
  return fit
}

const close = (value: number) => expect.closeTo(value, 8)
const seeded = { seed: 20261125, numRuns: 60 }

function answers(fit: LevelFit) {
  return {
    f: close(fit.f),
    p: close(fit.p),
    means: levelMeans(fit).map(({ estimate, se }) => ({
      estimate: close(estimate),
      se: close(se),
    })),
    pairs: allPairs(fit).map(({ difference, se, p }) => ({
      difference: close(difference),
      se: close(se),
      p: close(p),
    })),
  }
}

function plain(fit: LevelFit) {
  return {
    f: fit.f,
    p: fit.p,
    means: levelMeans(fit).map(({ estimate, se }) => ({ estimate, se })),
    pairs: allPairs(fit).map(({ difference, se, p }) => ({ difference, se, p })),
  }
}

describe('level fits', () => {
  test('the order of rows does not matter', () => {
    fc.assert(
      fc.property(panels, fc.infiniteStream(fc.nat()), (panel, keys) => {
        const shuffled = panel.rows
          .map((row) => ({ row, key: keys.next().value as number }))
          .sort((a, b) => a.key - b.key)
          .map(({ row }) => row)
        expect(plain(fitOf({ ...panel, rows: shuffled }))).toEqual(answers(fitOf(panel)))
      }),
      seeded,
    )
  })

  test('relabelling tasters changes nothing', () => {
    fc.assert(
      fc.property(panels, (panel) => {
        const last = panel.blockCount - 1
        const rows = panel.rows.map((row) => ({ ...row, block: last - row.block }))
        expect(plain(fitOf({ ...panel, rows }))).toEqual(answers(fitOf(panel)))
      }),
      seeded,
    )
  })

  test('shifting scores moves the means only', () => {
    fc.assert(
      fc.property(panels, fc.integer({ min: -1000, max: 1000 }), (panel, shift) => {
        const moved = plain(
          fitOf({ ...panel, rows: panel.rows.map((row) => ({ ...row, y: row.y + shift })) }),
        )
        const expected = answers(fitOf(panel))
        const means = levelMeans(fitOf(panel)).map(({ estimate, se }) => ({
          estimate: close(estimate + shift),
          se: close(se),
        }))
        expect(moved).toEqual({ ...expected, means })
      }),
      seeded,
    )
  })

  test('swapping the levels’ order permutes means and turns pairs around', () => {
    fc.assert(
      fc.property(panels, (panel) => {
        const last = panel.levelCount - 1
        const rows = panel.rows.map((row) => ({ ...row, level: last - row.level }))
        const [before, after] = [fitOf(panel), fitOf({ ...panel, rows })]
        expect(after.f).toEqual(close(before.f))
        const means = levelMeans(after).map(({ estimate }) => estimate)
        expect(means.reverse()).toEqual(levelMeans(before).map(({ estimate }) => close(estimate)))
        const turned = allPairs(after)
        for (const pair of allPairs(before)) {
          const match = turned.find(({ a, b }) => a === last - pair.b && b === last - pair.a)
          expect(match?.difference).toEqual(close(-pair.difference))
          expect(match?.p).toEqual(close(pair.p))
        }
      }),
      seeded,
    )
  })

  test('a row given twice in place of two equal rows: cells and rows agree', () => {
    fc.assert(
      fc.property(panels, (panel) => {
        // Doubling every row halves the variance of a mean and leaves every estimate where it was.
        const doubled = fitOf({ ...panel, rows: [...panel.rows, ...panel.rows] })
        const single = fitOf(panel)
        expect(levelMeans(doubled).map(({ estimate }) => estimate)).toEqual(
          levelMeans(single).map(({ estimate }) => close(estimate)),
        )
        expect(doubled.residual.sumOfSquares).toEqual(close(2 * single.residual.sumOfSquares))
      }),
      seeded,
    )
  })
})

describe('curves', () => {
  test('scaling and shifting the levels scales the slope and moves the vertex', () => {
    fc.assert(
      fc.property(
        panels,
        fc.integer({ min: 1, max: 50 }),
        fc.integer({ min: -500, max: 500 }),
        (panel, factor, shift) => {
          const cells = gatherCells(tableOf(panel))
          const values = Array.from({ length: panel.levelCount }, (_, i) => 60 + 3 * i + (i % 2))
          const moved = values.map((value) => factor * value + shift)
          const [line, movedLine] = [
            fitPolynomial(cells, values, 1),
            fitPolynomial(cells, moved, 1),
          ]
          if (!line.ok || !movedLine.ok) throw new Error('a line was refused')
          expect(slopeOf(movedLine).slope * factor).toEqual(close(slopeOf(line).slope))
          expect(slopeOf(movedLine).p).toEqual(close(slopeOf(line).p))
          const [curve, movedCurve] = [
            fitPolynomial(cells, values, 2),
            fitPolynomial(cells, moved, 2),
          ]
          if (!curve.ok || !movedCurve.ok) throw new Error('a curve was refused')
          const [vertex, movedVertex] = [vertexOf(curve), vertexOf(movedCurve)]
          if (!vertex.ok || !movedVertex.ok) {
            expect(movedVertex.ok).toBe(vertex.ok)
            return
          }
          const expected = factor * vertex.vertex + shift
          expect(Math.abs(movedVertex.vertex - expected)).toBeLessThan(
            1e-7 * (1 + Math.abs(expected)),
          )
          expect(movedVertex.fieller.kind).toBe(vertex.fieller.kind)
        },
      ),
      seeded,
    )
  })
})

describe('ranks', () => {
  const tables = fc.array(
    fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 4, maxLength: 4 }),
    {
      minLength: 2,
      maxLength: 9,
    },
  )

  test('the order of tasters does not matter; any rising change of scale neither', () => {
    fc.assert(
      fc.property(tables, (table) => {
        const ranked = rankBlocks(table)
        const other = rankBlocks(
          [...table].reverse().map((row) => row.map((score) => score ** 3 - 5)),
        )
        const [a, b] = [friedman(ranked), friedman(other)]
        expect(b).toEqual(a)
        const [p, q] = [page(ranked, 'rising'), page(other, 'rising')]
        if (!p.ok || !q.ok) {
          expect(q).toEqual(p)
          return
        }
        expect(q).toEqual({
          ...p,
          p: expect.closeTo(p.p, 12),
          variance: expect.closeTo(p.variance, 9),
        })
      }),
      seeded,
    )
  })

  test('turning the levels around exchanges rising and falling', () => {
    fc.assert(
      fc.property(tables, (table) => {
        const rising = page(rankBlocks(table), 'rising')
        const falling = page(rankBlocks(table.map((row) => [...row].reverse())), 'falling')
        if (!rising.ok || !falling.ok) {
          expect(falling).toEqual(rising)
          return
        }
        expect(falling.p).toBeCloseTo(rising.p, 12)
        expect(rising.p).toBeLessThanOrEqual(1)
      }),
      seeded,
    )
  })
})
