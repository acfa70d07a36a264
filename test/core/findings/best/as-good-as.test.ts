import { describe, expect, it } from 'vitest'
import { easiestOf } from '@/core/findings/best/easiest.ts'
import { findings } from '@/core/findings/findings.ts'
import { leastThatWouldDo } from '@/core/findings/judged/least-that-would-do.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { tableOf } from '../score-tables.ts'

/**
 * Three tasters, three levels, one session. Scores 60: 4 5 6, 65: 6 6 9, 70: 7 6 8; means 5, 7, 7.
 * Blocks: taster means 17/3, 17/3, 23/3. Residuals of y - taster - level + grand (19/3):
 * 60: -1/3 2/3 -1/3; 65: -1/3 -1/3 2/3; 70: 2/3 -1/3 -1/3. Sum of squares 3 x 6/9 = 2, df 4, variance 1/2,
 * se of a difference sqrt(2 x 0.5 / 3) = 0.577350; one-sided 95 % t with 4 df = 2.131847 (tables: 2.132); half-width 1.230822.
 */
const rows = [60, 65, 70].flatMap((level, at) =>
  ['a', 'b', 'c'].map((taster, who) => ({
    level,
    taster,
    liking:
      [
        [4, 5, 6],
        [6, 6, 9],
        [7, 6, 8],
      ][at]?.[who] ?? 0,
  })),
)
const halfWidth = 2.131846786 * Math.sqrt(1 / 3)

function found(margin: number, control?: number) {
  const options = control === undefined ? { margin } : { margin, control }
  const [response] = findings(tableOf(rows, options), { seed: 1, resamples: null }).responses
  if (!response) throw new Error('no response')
  return response
}

describe('as good as the best liked', () => {
  it('passes what cannot fall short by the margin', () => {
    const { equivalence } = found(1.5)
    if (!isPresent(equivalence)) throw new Error(equivalence.reason)
    // 65 and 70 have the same mean; the lower one stands as the best liked.
    expect(equivalence.map(({ level, against, passes }) => [level, against, passes])).toEqual([
      [60, 65, false],
      [70, 65, true],
    ])
    expect(equivalence[0]?.difference).toBeCloseTo(-2, 12)
    expect(equivalence[0]?.low).toBeCloseTo(-2 - halfWidth, 8)
    expect(equivalence[1]?.low).toBeCloseTo(-halfWidth, 8)
  })

  it('names the easiest: the control before the lowest where nothing else is known', () => {
    expect(found(1.5).easiest).toMatchObject({
      level: 65,
      against: 65,
      lowerLimit: 0,
      passes: [65, 70],
    })
    const easiest = found(1.5, 70).easiest
    expect(easiest).toMatchObject({ level: 70, against: 65, passes: [65, 70] })
    if (isPresent(easiest)) expect(easiest.lowerLimit).toBeCloseTo(-halfWidth, 8)
  })

  it('goes by failures, then handling, then hands-on time', () => {
    const equivalence = found(1.5).equivalence
    const ease = (level: number, failures: number, handling: number, handsSeconds: number) => ({
      ...{ level, failures, pieces: 4, handling, handsSeconds },
    })
    const easiest = (...eases: ReturnType<typeof ease>[]) => {
      const answer = easiestOf({ ...tableOf(rows), ease: eases }, equivalence)
      return isPresent(answer) ? answer.level : answer.reason
    }
    expect(easiest(ease(65, 1, 9, 10), ease(70, 0, 2, 90))).toBe(70)
    expect(easiest(ease(65, 0, 5, 10), ease(70, 0, 6, 90))).toBe(70)
    expect(easiest(ease(65, 0, 5, 90), ease(70, 0, 5, 10))).toBe(70)
    expect(easiest(ease(65, 0, 5, 10), ease(70, 0, 5, 10))).toBe(65)
  })

  it('says how many tasters a finer margin takes', () => {
    const { equivalence, easiest } = found(1)
    // With n tasters: t(2(n - 1)) x sqrt(1 / n): n = 3 1.2308, n = 4 1.9432 / 2 = 0.9716.
    expect(equivalence).toEqual({ reason: 'margin-too-fine', tasters: 4 })
    expect(easiest).toEqual({ reason: 'margin-too-fine', tasters: 4 })
    expect(leastThatWouldDo(Math.sqrt(1 / 3), 0.95, 3, 2)).toBe(5)
    expect(leastThatWouldDo(1, 1e-6, 3, 2)).toBeNull()
  })
})
