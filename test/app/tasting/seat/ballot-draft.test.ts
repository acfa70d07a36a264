import { expect, test } from 'vitest'
import {
  draftAnswers,
  draftOf,
  skippedField,
  valueField,
  whyField,
} from '@/app/tasting/seat/ballot-draft.ts'
import { tasterQuestions } from '@/core/tasting/taster-questions.ts'
import { planOf } from '../../../trial-of/plan-of.ts'

const questions = tasterQuestions(planOf()).map(({ id, name, scale }) => ({
  responseId: id,
  name,
  scale,
  definition: null,
  liking: false,
}))
const [liking, chew] = questions
if (!liking || !chew) throw new Error('the plan asks two things')

test('a press is an answer, nothing pressed is none, and a comma is read as a point', () => {
  expect(draftAnswers(questions, {})).toEqual([])
  expect(draftAnswers(questions, { [valueField(liking)]: '7,5' })).toEqual([
    { responseId: 'liking', value: 7.5 },
  ])
})

test('no answer carries its reason, and stands before a value pressed earlier', () => {
  const values = {
    [valueField(chew)]: '3',
    [skippedField(chew)]: 'yes',
    [whyField(chew)]: 'a cold',
  }
  expect(draftAnswers(questions, values)).toEqual([
    { responseId: 'chew', value: null, why: 'a cold' },
  ])
})

test('a question left out by one press needs no words, and opens for mending without any', () => {
  const left = draftAnswers(questions, { [skippedField(chew)]: 'yes', [whyField(chew)]: '  ' })
  expect(left).toEqual([{ responseId: 'chew', value: null, why: 'no reason given' }])
  expect(draftOf(left, 0)[whyField(chew)]).toBe('')
})

test('a sealed ballot opens for mending as it was sealed', () => {
  const sealed = [
    { responseId: 'liking', value: 6 },
    { responseId: 'chew', value: null, why: 'the piece ran out' },
  ]
  const draft = draftOf(sealed, 1_000)
  expect(draft.startedAt).toBe('1000')
  expect(draftAnswers(questions, draft)).toEqual(sealed)
})
