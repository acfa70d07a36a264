import { expect, test } from 'vitest'
import { stepPress } from '@/core/session/press/step-press.ts'
import { planOf } from '../../../trial-of/plan-of.ts'
import { sessionOf } from '../../../trial-of/session-of.ts'

const step = (id: string) => {
  const found = planOf().steps.find((each) => each.id === id)
  if (!found) throw new Error(`no step ${id}`)
  return found
}

test('a step of a dough is begun and ended by one entry that names step and repeat', () => {
  const item = {
    unit: { kind: 'batch', id: 'batch-1' },
    step: step('step-mix'),
    repeat: 2,
  } as const
  expect(stepPress(sessionOf(), { ...item, do: 'start' })).toEqual([
    {
      kind: 'step-started',
      about: { kind: 'batch', id: 'batch-1' },
      stepId: 'step-mix',
      repeat: 2,
    },
  ])
  expect(stepPress(sessionOf(), { ...item, do: 'end' })[0]?.kind).toBe('step-stopped')
})

test('a piece that goes into the oven is stamped by the same press', () => {
  const item = {
    unit: { kind: 'piece', id: 'piece-2' },
    step: step('step-bake'),
    repeat: 1,
  } as const
  expect(stepPress(sessionOf(), { ...item, do: 'start' }).map(({ kind }) => kind)).toEqual([
    'step-started',
    'bake-in',
  ])
  expect(stepPress(sessionOf(), { ...item, do: 'end' })[1]).toEqual({
    kind: 'bake-out',
    about: { kind: 'piece', id: 'piece-2' },
  })
})

test('a dough that is baked whole takes all its pieces along, but no spare one', () => {
  const session = sessionOf()
  const spare = { ...session.pieces[2], id: 'piece-3', role: 'spare', flightId: null } as const
  const pieces = [...session.pieces, { ...spare, batchId: 'batch-1', levelId: 'level-1' }]
  const item = {
    unit: { kind: 'batch', id: 'batch-1' },
    step: step('step-bake'),
    repeat: 1,
  } as const
  const press = stepPress({ ...session, pieces }, { ...item, do: 'start' })
  expect(press.map(({ about }) => about.id)).toEqual(['batch-1', 'piece-0', 'piece-1'])
})
