import { expect, test } from 'vitest'
import { winnerAndRival } from '@/app/findings/carry-on/winner.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { sampleTrial } from '../../../core/findings/sample-trial.ts'

const whole = sampleTrial('focaccia-hydration')
const plan = planInForce(whole)
const answer = trialFindings(whole, { unsealed: false, resamples: null })
if (!answer.ok) throw new Error(answer.reason)
const { document } = answer
const [main] = document.responses
if (!main) throw new Error('the sample has a main response')
/** The id findings know a level by. */
const idOf = (name: number) => document.levels.find((level) => level.name === name)?.id ?? ''
const ending = (level: string | null) => ({
  ...document,
  responses: [
    { ...main, conclusion: { ...main.conclusion, ending: { ...main.conclusion.ending, level } } },
    ...document.responses.slice(1),
  ],
})
const withoutEasiest = ending(null)

test('the level the conclusion ends with stands against the control', () => {
  const pair = winnerAndRival(plan, ending(idOf(70)))
  expect(pair?.winner.value).toBe(70)
  expect(pair?.rival.control).toBe(true)
})

test('without an easiest the best by its mean wins; where that is the control, the next best stands against it', () => {
  if (!isPresent(main.factor)) throw new Error('the factor answers in the sample')
  const [best, next] = main.factor.means
    .toSorted((a, b) => b.estimate - a.estimate)
    .map(({ level }) => level)
  const pair = winnerAndRival(plan, withoutEasiest)
  expect(pair?.winner.id).toBe(best)
  const winnerIsControl = pair?.winner.control ?? false
  expect(pair?.rival.id).toBe(winnerIsControl ? next : idOf(74))
})

test('where less is better the lowest mean wins', () => {
  if (!isPresent(main.factor)) throw new Error('the factor answers in the sample')
  const least = main.factor.means.toSorted((a, b) => a.estimate - b.estimate)[0]?.level
  const turned = {
    ...plan,
    responses: plan.responses.map((response) =>
      response.id === plan.mainResponseId
        ? { ...response, better: { is: 'lower' as const } }
        : response,
    ),
  }
  expect(winnerAndRival(turned, withoutEasiest)?.winner.id).toBe(least)
})

test('without means there is neither', () => {
  const silent = { reason: 'no-scores' as const }
  const responses = [{ ...main, pieces: silent, doughs: silent, factor: silent }]
  expect(winnerAndRival(plan, { ...document, responses })).toBeNull()
})
