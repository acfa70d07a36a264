import { expect, test } from 'vitest'
import { computeFindings } from '@/app/worker/compute-findings.ts'
import { toMendInTrial } from '@/core/fairness/fairness-of-trial.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { sampleTrial } from '../../core/findings/sample-trial.ts'

const whole = sampleTrial('focaccia-hydration')
const { seed } = whole.trial
const read = scoresOfTrial(whole, { unsealed: false })
if (!read.ok) throw new Error(read.reason)
const { scores } = read

test('the worker answers what the command line computes, without the re-drawing', () => {
  const found = trialFindings(whole, { unsealed: false, resamples: null })
  expect(computeFindings({ scores, seed, whole: null }).findings).toEqual(
    found.ok && found.document,
  )
})

test('the answer passes through a message as it is', () => {
  const answer = computeFindings({ scores, seed, whole: null })
  expect(structuredClone(answer)).toEqual(answer)
})

test('open fairness items of the trial put mending first, and nothing else moves', () => {
  const careless = { ...whole, plans: whole.plans.map((plan) => ({ ...plan, tastersTalk: true })) }
  expect(toMendInTrial(careless)).toBeGreaterThan(0)
  const asTable = computeFindings({ scores, seed, whole: null }).next
  expect(computeFindings({ scores, seed, whole: careless }).next).toEqual(['mend', ...asTable])
})

test('a curve is given for each response in their order', () => {
  const { curves, findings } = computeFindings({ scores, seed, whole: null })
  expect(curves).toHaveLength(findings.responses.length)
})

test('weights move the trade-off alone', () => {
  const plain = computeFindings({ scores, seed, whole: null }).findings
  const [main] = plain.responses
  if (!main) throw new Error('there is a main response')
  const weights = [{ responseId: main.id, weight: 3 }]
  const weighed = computeFindings({ scores, seed, whole: null, weights }).findings
  expect(weighed.responses).toEqual(plain.responses)
  expect(weighed.tradeOff).not.toEqual(plain.tradeOff)
})
