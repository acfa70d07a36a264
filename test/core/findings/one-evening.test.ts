import { expect, test } from 'vitest'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { bakeNext } from '@/core/wording/findings/bake-next.ts'
import { answerText, headline, spokenOf } from '@/core/wording/findings/headline.ts'
import { nextStepText } from '@/core/wording/findings/next-step-text.ts'
import { oneEveningTrial } from './one-evening-trial.ts'

function said(liking: Readonly<Record<number, number>>, change: Partial<Plan> = {}) {
  const found = trialFindings(oneEveningTrial(liking, change), { unsealed: false, resamples: null })
  if (!found.ok) throw new Error(found.reason)
  const [main] = found.document.responses
  if (!main) throw new Error('a main response')
  const naming = namingOf(found.document, found.scores.responses[0])
  const spoken = spokenOf(main, naming)
  return {
    evening: main.conclusion.oneEvening,
    answer: answerText(headline(main, naming)),
    next: bakeNext(spoken, found.scores),
    step: nextStepText('repeat', spoken),
    ending: main.conclusion.ending.kind,
  }
}

test('one evening of one mouth is an order of liking, and says nothing yet of what was changed', () => {
  const { answer, next, step, ending } = said({ 52: 5, 56: 8, 60: 6 })
  expect(answer).toBe(
    'You liked 56 best, then 60, then 52, without knowing which was which. One evening, one mouth: it says nothing yet of hydration itself. Had the three been alike, one would have come first all the same.',
  )
  expect(next.title).toBe('Bake next')
  expect(next.levels).toEqual(['level-1', 'level-2', 'level-3'])
  expect(next.text).toContain('on two evenings that are written down before the first mix')
  expect(step.title).toBe('Plan two more evenings')
  expect(ending).toBe('stay')
})

test('equals are named together, and nothing is best where all are alike', () => {
  expect(said({ 52: 7, 56: 7, 60: 6 }).answer).toMatch(
    /^You liked 52 and 56 best, then 60, without/,
  )
  expect(said({ 52: 7, 56: 7, 60: 7 }).answer).toBe(
    'You liked 52, 56 and 60 alike, without knowing which was which. One evening, one mouth: it says nothing yet of hydration itself.',
  )
})

test('who knew which was which is told so, and evenings written first are gone on with', () => {
  const knew = said({ 52: 5, 56: 8, 60: 6 }, { tasters: [{ tasterId: 'club-1', knows: true }] })
  expect(knew.answer).toMatch(/^You liked 56 best, then 60, then 52, knowing which was which\./)
  const { next, step } = said({ 52: 5, 56: 8, 60: 6 }, { plannedSessions: 3 })
  expect(next.text).toBe(
    'Once more, on two more evenings, the last dough first next time. As written, all three then count.',
  )
  expect(step.title).toBe('Go on: two evenings to come')
})

test('two tasters, two sessions or another response are no evening alone', () => {
  const two = said({ 52: 5, 56: 8, 60: 6 })
  expect(two.evening).toEqual({
    order: [['level-2'], ['level-3'], ['level-1']],
    blind: true,
    left: 0,
  })
  const found = trialFindings(oneEveningTrial({ 52: 5, 56: 8, 60: 6 }), {
    ...{ unsealed: false, resamples: null },
  })
  if (!found.ok) throw new Error(found.reason)
  const others = found.document.responses.slice(1)
  expect(others.length).toBeGreaterThan(0)
  expect(others.map(({ conclusion }) => conclusion.oneEvening)).toEqual(others.map(() => null))
})
