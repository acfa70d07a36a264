import { describe, expect, test } from 'vitest'
import type { Detectable, DetectableRung } from '@/core/design/detectable.ts'
import type { Response } from '@/core/trial/response.ts'
import { detectSentences, detectTable } from '@/core/wording/plan/detect-text.ts'

const showing = (wouldShow: number): DetectableRung => ({
  ok: true,
  standardError: 1,
  df: 4,
  tukeyHalfWidth: wouldShow,
  slopeHalfWidth: null,
  wouldShow,
  pairPowerAtMargin: 0.08,
  overallPowerAtMargin: 0.08,
})
const design: Detectable = {
  thesePieces: showing(3.24),
  theseDoughs: { ok: false, reason: 'factor-answers' },
  theFactor: showing(11.3),
}
const liking: Response = {
  id: 'liking',
  name: 'Liking',
  by: 'taster',
  about: 'piece',
  scale: { kind: 'nine-point', anchors: [] },
  better: { is: 'higher' },
  margin: 1,
}
const plan = {
  tasters: [
    { tasterId: 'a', knows: false },
    { tasterId: 'b', knows: false },
  ],
  flights: 1,
  plannedSessions: 2,
  levels: [],
  responses: [liking],
  mainResponseId: 'liking',
}

describe('what a design could show', () => {
  test('names no more points than lie between 1 and 9', () => {
    const said = detectSentences(design, plan)
    expect(said).toContain('Between these pieces a true difference of about 3.2 points would show.')
    expect(said).toContain('it would take more than the 8 points between 1 and 9')
    expect(said).not.toContain('11.3')
  })

  test('nor does the table', () => {
    const { rows } = detectTable({
      now: design,
      anotherSession: { ...design, theFactor: showing(8) },
      twoMoreTasters: design,
      oneLevelLess: null,
    })
    expect(rows.map((row) => row[3])).toEqual(['over 8', '8.0', 'over 8'])
  })
})
