import { expect, it } from 'vitest'
import { dayClosed, dayMissing, isNothingMissing } from '@/core/session/day-missing.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { madePlan } from '../made-plan.ts'
import { madeLog } from './made-events.ts'
import { madeSession } from './made-session.ts'

const plan = madePlan()
const session = madeSession(plan)
const counted = session.pieces.filter(({ role }) => role === 'counted')

it('names what was never baked and what the baker was asked and did not answer', () => {
  const { events, log } = madeLog()
  const [first, ...others] = counted
  log({ kind: 'bake-in' }, { about: { kind: 'piece', id: first?.id ?? '' } })
  const [dough = ''] = session.dealt.doughOrder
  log({ kind: 'measured', responseId: 'sticky', value: 6 }, { about: { kind: 'batch', id: dough } })
  const missing = dayMissing(session, plan, effectiveEvents(events))
  for (const { id } of others) expect(missing.neverBaked).toContain(id)
  expect(missing.neverBaked).not.toContain(first?.id)
  const sticky = missing.answers.find(({ response }) => response.id === 'sticky')
  expect(sticky?.units.map(({ id }) => id).toSorted()).toEqual(
    session.dealt.doughOrder.filter((id) => id !== dough).toSorted(),
  )
  // Bake loss is worked out from masses: no piece was weighed.
  expect(missing.answers.find(({ response }) => response.id === 'loss')?.units).toHaveLength(
    counted.length,
  )
})

it('asks nothing of what failed and was left out, and is closed by one entry', () => {
  const { events, log } = madeLog()
  for (const id of session.dealt.doughOrder)
    log({ kind: 'failure', what: 'not-served' }, { about: { kind: 'batch', id } })
  const missing = dayMissing(session, plan, effectiveEvents(events))
  expect(missing.neverBaked).toEqual([])
  expect(isNothingMissing({ ...missing, answers: [] })).toBe(true)
  expect(dayClosed(effectiveEvents(events))).toBe(false)
  log({ kind: 'day-closed' })
  expect(dayClosed(effectiveEvents(events))).toBe(true)
})
