import { expect, test } from 'vitest'
import { computeFindings } from '@/app/worker/compute-findings.ts'
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
  expect(computeFindings({ scores, seed, toMend: 0 }).findings).toEqual(found.ok && found.document)
})

test('the answer passes through a message as it is', () => {
  const answer = computeFindings({ scores, seed, toMend: 0 })
  expect(structuredClone(answer)).toEqual(answer)
})

test('open fairness items put mending first, and nothing else moves', () => {
  const [fair, unfair] = [0, 2].map((toMend) => computeFindings({ scores, seed, toMend }).next)
  expect(unfair).toEqual(['mend', ...(fair ?? [])])
})

test('a curve is given for each response in their order', () => {
  const { curves, findings } = computeFindings({ scores, seed, toMend: 0 })
  expect(curves).toHaveLength(findings.responses.length)
})

test('weights move the trade-off alone', () => {
  const plain = computeFindings({ scores, seed, toMend: 0 }).findings
  const [main] = plain.responses
  if (!main) throw new Error('there is a main response')
  const weights = [{ responseId: main.id, weight: 3 }]
  const weighed = computeFindings({ scores, seed, toMend: 0, weights }).findings
  expect(weighed.responses).toEqual(plain.responses)
  expect(weighed.tradeOff).not.toEqual(plain.tradeOff)
})
