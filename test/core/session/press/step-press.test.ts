import { expect, test } from 'vitest'
import type { Standing } from '@/core/session/effective-events.ts'
import { stepPress } from '@/core/session/press/step-press.ts'
import { planOf } from '../../../trial-of/plan-of.ts'
import { sessionOf } from '../../../trial-of/session-of.ts'
import { madeLog } from '../made-events.ts'

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
  expect(stepPress(sessionOf(), { ...item, do: 'start' }, [])).toEqual([
    {
      kind: 'step-started',
      about: { kind: 'batch', id: 'batch-1' },
      stepId: 'step-mix',
      repeat: 2,
    },
  ])
  expect(stepPress(sessionOf(), { ...item, do: 'end' }, [])[0]?.kind).toBe('step-stopped')
})

test('a piece that goes into the oven begins its bake by that one entry, and ends it by coming out', () => {
  const item = {
    unit: { kind: 'piece', id: 'piece-2' },
    step: step('step-bake'),
    repeat: 1,
  } as const
  const said = { about: { kind: 'piece', id: 'piece-2' }, stepId: 'step-bake', repeat: 1 }
  expect(stepPress(sessionOf(), { ...item, do: 'start' }, [])).toEqual([
    { kind: 'bake-in', ...said },
  ])
  expect(stepPress(sessionOf(), { ...item, do: 'end' }, [])).toEqual([
    { kind: 'bake-out', ...said },
  ])
})

test('a dough that is baked whole is one entry with its pieces, but no spare one and none that is out', () => {
  const session = sessionOf()
  const spare = { ...session.pieces[2], id: 'piece-3', role: 'spare', flightId: null } as const
  const pieces = [...session.pieces, { ...spare, batchId: 'batch-1', levelId: 'level-1' }]
  const item = {
    unit: { kind: 'batch', id: 'batch-1' },
    step: step('step-bake'),
    repeat: 1,
  } as const
  const press = (what: 'start' | 'end', log: readonly Standing[] = []) =>
    stepPress({ ...session, pieces }, { ...item, do: what }, log)
  const said = { about: item.unit, stepId: 'step-bake', repeat: 1 }
  expect(press('start')).toEqual([{ kind: 'bake-in', ...said, pieceIds: ['piece-0', 'piece-1'] }])
  const { events, log } = madeLog()
  log({ kind: 'bake-out' }, { about: { kind: 'piece', id: 'piece-0' } })
  expect(press('end', events as Standing[])).toEqual([
    { kind: 'bake-out', ...said, pieceIds: ['piece-1'] },
  ])
})
