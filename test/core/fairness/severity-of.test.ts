import { describe, expect, it } from 'vitest'
import type { FairnessCode } from '@/core/fairness/fairness-data.ts'
import { severityOf } from '@/core/fairness/severity-of.ts'
import { thresholds } from '@/core/fairness/thresholds.ts'
import { thresholdSources } from '@/core/wording/fairness/threshold-sources.ts'

const codes = Object.keys(thresholds) as FairnessCode[]

describe('severityOf', () => {
  it.each(codes)('follows the size of %s over its thresholds', (code) => {
    const { know, fix } = thresholds[code]
    expect(thresholdSources[code]).not.toBe('')
    expect(severityOf(code, 0)).toBe('fine')
    if (know !== null) {
      expect(severityOf(code, know * 0.99)).toBe('fine')
      expect(severityOf(code, know)).toBe(fix === know ? 'fix' : 'know')
    }
    if (fix === null) expect(severityOf(code, 1e6)).not.toBe('fix')
    else expect([severityOf(code, fix), severityOf(code, -fix)]).toEqual(['fix', 'fix'])
    if (fix !== null && know !== null) expect(fix).toBeGreaterThanOrEqual(know)
  })

  it('takes the widening of an interval from the correlation: 5 % at 0.3, 40 % at 0.7', () => {
    // The variance of a slope grows by 1/(1 − r²) when a covariate of correlation r is fitted beside it.
    const { know, fix } = thresholds['dough-order']
    expect(1 / Math.sqrt(1 - (know ?? 0) ** 2)).toBeCloseTo(1.05, 2)
    expect(1 / Math.sqrt(1 - (fix ?? 0) ** 2)).toBeCloseTo(1.4, 2)
  })
})
