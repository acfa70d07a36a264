import { expect, test } from 'vitest'
import { bakes } from '@/core/session/bakes.ts'
import { departures } from '@/core/session/departures.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { corrected } from '@/core/session/press/correction.ts'
import { impossibleTime } from '@/core/session/press/impossible-time.ts'
import { movedOn } from '@/core/session/press/moved-on.ts'
import { minutesSinceOven } from '@/core/session/serving-age.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planOf } from '../../trial-of/plan-of.ts'
import { sessionOf } from '../../trial-of/session-of.ts'
import { madeLog } from './made-events.ts'

const session = sessionOf()
const minutes = (many: number) => many * 60_000
const whole: Plan = {
  ...planOf(),
  steps: planOf().steps.map((step) => ({ ...step, per: 'batch' as const })),
}
const dough = { kind: 'batch', id: 'batch-1' } as const
const piece = (id: string) => ({ kind: 'piece' as const, id })
const oven = { stepId: 'step-bake', repeat: 1 }
const pieceIds = ['piece-0', 'piece-1']

const runOf = (plan: Plan, log: Parameters<typeof effectiveEvents>[0], id: string) => {
  const run = stepRuns(session, plan, effectiveEvents(log)).find(
    ({ unit, step }) => unit.id === id && step.kind === 'bake',
  )
  return [run?.startedAt, run?.stoppedAt]
}
const bakeOf = (log: Parameters<typeof effectiveEvents>[0], id: string) => {
  const bake = bakes(session, effectiveEvents(log)).find(({ pieceId }) => pieceId === id)
  return [bake?.inAt, bake?.outAt]
}

test('a corrected out-time moves the run and the bake together, of a piece as of a dough baked whole', () => {
  const { events, log } = madeLog('session-1')
  log({ kind: 'bake-in', ...oven }, { about: piece('piece-2'), at: minutes(10) })
  const out = log({ kind: 'bake-out', ...oven }, { about: piece('piece-2'), at: minutes(30) })
  const mend = (event: typeof out, at: number) => {
    const { at: moment, about, ...said } = corrected(event, { value: null, text: '', at })
    log(said as Parameters<typeof log>[0], { about, at: moment ?? 0 })
  }
  mend(out, minutes(28))
  expect(runOf(planOf(), events, 'piece-2')).toEqual([minutes(10), minutes(28)])
  expect(bakeOf(events, 'piece-2')).toEqual([minutes(10), minutes(28)])

  log({ kind: 'bake-in', ...oven, pieceIds }, { about: dough, at: minutes(40) })
  const together = log({ kind: 'bake-out', ...oven, pieceIds }, { about: dough, at: minutes(70) })
  mend(together, minutes(65))
  expect(runOf(whole, events, 'batch-1')).toEqual([minutes(40), minutes(65)])
  for (const id of pieceIds) expect(bakeOf(events, id)).toEqual([minutes(40), minutes(65)])
  // A ballot begun at minute 95 meets bread of 30 minutes.
  expect(minutesSinceOven(effectiveEvents(events), 'piece-1', minutes(95))).toBe(30)
})

test('a bake more than planned departs from the plan, a piece before its dough does not', () => {
  const { events, log } = madeLog('session-1')
  log({ kind: 'bake-in', ...oven }, { about: piece('piece-0'), at: minutes(1) })
  log({ kind: 'bake-in', ...oven, pieceIds }, { about: dough, at: minutes(2) })
  log({ kind: 'bake-in', ...oven, repeat: 2 }, { about: dough, at: minutes(3) })
  const found = departures({ session, plan: whole, events })
  expect(found.filter(({ what }) => what === 'step-extra')).toMatchObject([
    { unit: dough, stepId: 'step-bake', repeat: 2, planned: 1 },
  ])
})

test('a second bake is a step of its own', () => {
  const [bake] = planOf().steps.filter(({ kind }) => kind === 'bake')
  if (!bake) throw new Error('the made plan bakes')
  const twice: Plan = { ...planOf(), steps: [...planOf().steps, { ...bake, id: 'step-brown' }] }
  const { events, log } = madeLog('session-1')
  const about = piece('piece-2')
  log({ kind: 'bake-in', ...oven }, { about, at: minutes(1) })
  log({ kind: 'bake-out', ...oven }, { about, at: minutes(9) })
  const brown = { ...oven, stepId: 'step-brown' }
  const press = {
    kind: 'bake-in',
    ...brown,
    about,
    trialId: 'trial-1',
    sessionId: 'session-1',
  } as const
  expect(movedOn(events, [press])).toBeNull()
  log({ kind: 'bake-in', ...brown }, { about, at: minutes(20) })
  log({ kind: 'bake-out', ...brown }, { about, at: minutes(25) })
  expect(movedOn(events, [press])).toMatchObject({ why: 'already-begun' })
  const runs = stepRuns(session, twice, effectiveEvents(events)).flatMap((run) =>
    run.unit.id === 'piece-2' && run.step.kind === 'bake' ? [[run.startedAt, run.stoppedAt]] : [],
  )
  expect(runs).toEqual([
    [minutes(1), minutes(9)],
    [minutes(20), minutes(25)],
  ])
})

test('a piece that another tab took out is not taken out with its dough again, nor out before it was in', () => {
  const { events, log } = madeLog('session-1')
  log({ kind: 'bake-in', ...oven, pieceIds }, { about: dough, at: minutes(40) })
  const alone = log({ kind: 'bake-out', ...oven }, { about: piece('piece-0'), at: minutes(60) })
  const press = {
    kind: 'bake-out',
    ...oven,
    about: dough,
    trialId: 'trial-1',
    sessionId: 'session-1',
  } as const
  expect(movedOn(events, [{ ...press, pieceIds }])).toMatchObject({
    why: 'already-ended',
    by: alone,
  })
  expect(movedOn(events, [{ ...press, pieceIds: ['piece-1'] }])).toBeNull()
  const day = { log: effectiveEvents(events), now: minutes(90), dealtAt: 0 }
  expect(impossibleTime(alone, minutes(39), day)).toEqual({
    ...{ why: 'ends-before-it-begins', beganAt: minutes(40) },
  })
  expect(impossibleTime(alone, minutes(41), day)).toBeNull()
})
