import { expect, test } from 'vitest'
import { computeFindings, type FindingsQuestion } from '@/app/worker/compute-findings.ts'
import { toMendInTrial } from '@/core/fairness/fairness-of-trial.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { sampleTrial } from '../../core/findings/sample-trial.ts'

const whole = sampleTrial('focaccia-hydration')
const { seed } = whole.trial
const read = scoresOfTrial(whole, { unsealed: false })
if (!read.ok) throw new Error(read.reason)
const { scores } = read
const table = { of: { scores, seed }, weights: null }

function answered(question: FindingsQuestion) {
  const answer = computeFindings(question)
  if (!answer) throw new Error('there are scores')
  return answer
}

test('the worker answers what the command line computes, without the re-drawing', () => {
  const found = trialFindings(whole, { unsealed: false, resamples: null })
  expect(answered(table).findings).toEqual(found.ok && found.document)
})

test('the answer passes through a message as it is', () => {
  const answer = answered(table)
  expect(structuredClone(answer)).toEqual(answer)
})

test('open fairness items of the trial put mending first, and nothing else moves', () => {
  const careless = { ...whole, plans: whole.plans.map((plan) => ({ ...plan, tastersTalk: true })) }
  expect(toMendInTrial(careless)).toBeGreaterThan(0)
  const asTable = answered(table).next
  expect(answered({ of: { whole: careless }, weights: null }).next).toEqual(['mend', ...asTable])
})

test('the answer names the trial and the revision that were asked about; that of a table names none', () => {
  const moved = { ...whole, trial: { ...whole.trial, revision: 97 } }
  expect(answered({ of: { whole: moved }, weights: null }).asOf).toEqual({
    ...{ trialId: whole.trial.id, revision: 97 },
  })
  expect(answered(table).asOf).toBeNull()
})

test('a curve is given for each response in their order', () => {
  const { curves, findings } = answered(table)
  expect(curves).toHaveLength(findings.responses.length)
})

test('weights move the trade-off alone', () => {
  const plain = answered(table).findings
  const [main] = plain.responses
  if (!main) throw new Error('there is a main response')
  const weights = [{ responseId: main.id, weight: 3 }]
  const weighed = answered({ ...table, weights }).findings
  expect(weighed.responses).toEqual(plain.responses)
  expect(weighed.tradeOff).not.toEqual(plain.tradeOff)
})

test('a trial without scores, and one that is sealed, have no answer', () => {
  const bare = { ...whole, sessions: [], events: [], ballots: [] }
  expect(computeFindings({ of: { whole: bare }, weights: null })).toBeNull()
  const kept = { ...whole, events: whole.events.filter(({ kind }) => kind !== 'unsealed') }
  expect(computeFindings({ of: { whole: kept }, weights: null })).toBeNull()
})
