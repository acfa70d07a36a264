import { describe, expect, test } from 'vitest'
import type { Detectable, DetectableRung } from '@/core/design/detectable.ts'
import type { Response } from '@/core/trial/response.ts'
import { detectByQuestion, detectSentences, detectTable } from '@/core/wording/plan/detect-text.ts'

const showing = (wouldShow: number): DetectableRung => ({
  ok: true,
  standardError: 1,
  df: 4,
  tukeyHalfWidth: wouldShow,
  slopeHalfWidth: null,
  wouldShow,
  riseShows: wouldShow / 2,
  humpShows: wouldShow / 4,
  ending: {
    named: { chance: 0.34, enough: 14 },
    notNamed: { chance: 0.2, enough: null },
  },
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
  expectation: null,
}

describe('what a design could show', () => {
  test('names no more points than lie between 1 and 9', () => {
    const said = detectSentences(design, plan)
    expect(said).toContain('Between these pieces a true difference of about 3.2 points would show.')
    expect(said).toContain('it would take more than the 8 points between 1 and 9')
    expect(said).not.toContain('11.3')
  })

  test('speaks of what was expected, and of how likely the ending is', () => {
    const level = { id: 'a', value: 62, label: '62', control: true }
    const asked = { ...plan, levels: [level, { ...level, id: 'b', value: 66 }] }
    const rising = { ...asked, expectation: { direction: 'rises' as const, bestGuess: null } }
    expect(detectSentences(design, rising)).toContain(
      'Of the factor itself, made again, a change of about 5.7 points from the first to the last level would show.',
    )
    const inside = { ...asked, expectation: { direction: 'best-inside' as const, bestGuess: null } }
    expect(detectSentences(design, inside)).toContain('stands about 2.8 points above both ends')
    expect(detectSentences(design, rising)).toContain(
      'within your margin of 1, would be shown in 34 of 100 such trials where that is so and the level is named before the mix, in 20 where it is not named; 14 sessions would make it 80 (no number of sessions within reason if not named).',
    )
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

  test('says of each question of the verdict what would show, and how often the ending can be given', () => {
    const help = { now: design, anotherSession: design, twoMoreTasters: design, oneLevelLess: null }
    const { head, rows } = detectByQuestion(help)
    expect(head).toEqual([
      ...['Of the factor', 'Rise or fall', 'In between', 'Any pair'],
      ...['Ending named', 'not named'],
    ])
    // 11.3 is more than the scale holds; the half and the quarter of it as made above.
    expect(rows[0]).toEqual(['As planned', '5.7', '2.8', 'over 8', '34 %', '20 %'])
    expect(rows.map(([step]) => step)).toEqual([
      'As planned',
      'Another session',
      'Two more tasters',
    ])
  })

  test('speaks of these pieces where one session cannot speak of the factor', () => {
    const alone = {
      ...design,
      theFactor: { ok: false as const, reason: 'needs-two-sessions' as const },
    }
    const help = { now: alone, anotherSession: design, twoMoreTasters: alone, oneLevelLess: null }
    const { head, rows } = detectByQuestion(help)
    expect(head[0]).toBe('Of these pieces')
    expect(rows[0]?.slice(1, 4)).toEqual(['1.6', '0.8', '3.2'])
  })

  test('says that looking early is reckoned with, and nothing of it where nobody looks', () => {
    const looks = { hopedLevelId: null, mostSessions: 5, looks: true, againstUsual: false }
    const said = detectSentences(design, { ...plan, plannedSessions: 3, writtenFirst: looks })
    expect(said).toContain(
      'After 3 of at most 5 sessions an answer has to be clearer than usual; this reckons with it.',
    )
    const all = detectSentences(design, { ...plan, plannedSessions: 5, writtenFirst: looks })
    expect(all).toContain(
      'Looked at after each session from the second on, an answer has to be clearer than usual',
    )
    expect(detectSentences(design, plan)).not.toContain('clearer')
  })
})
