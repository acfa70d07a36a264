import { expect, test } from 'vitest'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import { weightsSection } from '@/core/report/weights-section.ts'
import {
  changeSentence,
  decideSentence,
  type SentencePiece,
} from '@/core/wording/plan/plan-sentences.ts'

let count = 0
const plan = startingPlan({ newId: () => `id-${count++}`, at: 0, zone: 'UTC' })
const read = (pieces: readonly SentencePiece[]) =>
  pieces.map((piece) => (typeof piece === 'string' ? piece : piece.value)).join('')

test('the plan of a new trial reads as two sentences', () => {
  expect(read(changeSentence(plan))).toBe(
    'We change hydration by the water from 66 to 74\u00a0% in 3 doughs; usual is 70. Each is a dough of its own, and the flour is the same.',
  )
  expect(read(decideSentence(plan))).toBe(
    'Liking decides. We expect nothing yet; less than 1\u00a0point does not matter. We hope for none in particular.',
  )
})

test('options of a choice are named, and what is missing is said', () => {
  const choice = {
    ...plan,
    factor: { ...plan.factor, name: 'flour', unitOfMeasure: '', acts: { on: 'choice' as const } },
    levels: ['Bag A', 'Bag B'].map((label) => ({ id: label, label, value: null, control: false })),
  }
  expect(read(changeSentence(choice))).toContain(
    'We change flour: Bag A and Bag B; none is the usual.',
  )
  expect(read(changeSentence({ ...plan, levels: [] }))).toContain('in no dough yet.')
  expect(read(decideSentence({ ...plan, mainResponseId: null }))).toContain('Nothing yet decides.')
})

test('levels with a water of their own say so in the plan, and in the report where one weighs from it', () => {
  const flours = {
    ...plan,
    factor: { ...plan.factor, name: 'flour', unitOfMeasure: '', acts: { on: 'choice' as const } },
    levels: [
      { id: 'a', label: 'Bag A', value: null, control: true },
      {
        ...{ id: 'b', label: 'Bag B', value: null, control: false },
        changes: [{ what: 'hydration' as const, percent: 71.5 }],
      },
    ],
  }
  const waters = 'Bag A that of the formula and Bag B 71.5 %'
  expect(read(changeSentence(flours)).replaceAll('\u00a0', ' ')).toContain(
    ` Each has its own water: ${waters}.`,
  )
  const [list] = weightsSection(flours, []).blocks.filter(({ kind }) => kind === 'list')
  expect(list).toMatchObject({
    items: expect.arrayContaining([`Each level has its own water: ${waters}.`]),
  })
  expect(read(changeSentence(plan))).not.toContain('own water')
})

test('every value opens something', () => {
  for (const piece of [...changeSentence(plan), ...decideSentence(plan)])
    if (typeof piece !== 'string') expect(piece.opens).not.toBe('')
})
