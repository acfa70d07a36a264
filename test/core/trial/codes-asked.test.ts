import { expect, test } from 'vitest'
import { codeProblems } from '@/core/trial/codes-asked.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import { planProblemText } from '@/core/wording/plan/plan-problem-text.ts'
import { madePlan } from '../made-plan.ts'

test('codes that would run out are said at planning, not when they have', () => {
  const plan = { ...madePlan(), warmUpPiece: false, tellApart: null, flights: 24 }
  // Four levels in 24 flights take 96 codes; 495 hold 5 sessions of 96 (480) and no sixth (576).
  expect(codeProblems({ ...plan, plannedSessions: 5 })).toEqual([])
  const six = { ...plan, plannedSessions: 6 }
  const [problem] = planProblems(six).filter(({ reason }) => reason === 'codes-run-out')
  expect(problem).toMatchObject({ asked: 96, plannedSessions: 6, lastFor: 5, path: '/flights' })
  expect(problem && planProblemText(problem)).toContain('last for 5')
})
