import { describe, expect, it } from 'vitest'
import { plannedDay } from '@/core/clock-plan/planned-day.ts'
import { type AgendaItem, agenda } from '@/core/session/agenda.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { madePlan } from '../made-plan.ts'
import { madeLog } from './made-events.ts'
import { madeSession, nth } from './made-session.ts'

const seconds = (count: number) => 1_000_000 + count * 1000
const minutes = (count: number) => seconds(count * 60)

/** A day on which every piece is balled, and has rested as long as planned, so that all are ready for the oven at minute 0. */
function readyDay(plan: Plan, session: Session) {
  const { events, log } = madeLog()
  const { byKey } = plannedDay(plan, session)
  for (const { id } of session.pieces) {
    const about = { kind: 'piece', id } as const
    const rests =
      (byKey.get(`${id} bake 1`)?.beginSeconds ?? 0) - (byKey.get(`${id} ball 1`)?.endSeconds ?? 0)
    const at = minutes(0) - rests * 1000
    log({ kind: 'step-started', stepId: 'ball', repeat: 1 }, { about, at })
    log({ kind: 'step-stopped', stepId: 'ball', repeat: 1 }, { about, at })
  }
  const oven = (kind: 'bake-in' | 'bake-out', id: string, when: number) =>
    log({ kind }, { about: { kind: 'piece', id }, at: when })
  const items = (now: number) => agenda(session, plan, effectiveEvents(events), now)
  return { log, oven, items }
}

const line = ({ do: what, unit }: AgendaItem) => `${what} ${unit.id}`

// A bake of the made plan takes 20 s of work and 240 s in the oven; then 15 s for the pull and 60 s until it is as hot again.
describe('an oven for one piece at once', () => {
  const plan = madePlan()
  const session = madeSession(plan)
  const loaded = session.dealt.loads.flatMap((load) => load.pieceIds)
  const [one = '', two = '', three = ''] = loaded

  it('lets the piece inside come out before the next goes in, which falls due then and no sooner', () => {
    const { oven, items } = readyDay(plan, session)
    oven('bake-in', one, minutes(1))
    const [out, next, afterNext] = items(minutes(2))
    expect(out && line(out)).toBe(`end ${one}`)
    expect(out?.dueAt).toBe(minutes(5))
    expect(next && line(next)).toBe(`start ${two}`)
    expect(next).toMatchObject({ dueAt: seconds(5 * 60 + 75), lateSeconds: -255 })
    // The second is taken up then and has its 20 and 240 s.
    expect(afterNext).toMatchObject({ unit: { id: three }, dueAt: seconds(5 * 60 + 75 + 260 + 75) })
  })

  it('keeps the place of a piece that is overdue: it comes first, and nothing is late that cannot go in', () => {
    const { oven, items } = readyDay(plan, session)
    oven('bake-in', one, minutes(1))
    const [out, ...others] = items(minutes(6))
    expect(out && line(out)).toBe(`end ${one}`)
    expect(out?.lateSeconds).toBe(60)
    expect(others[0]).toMatchObject({
      unit: { id: two },
      ...{ dueAt: seconds(6 * 60 + 75), lateSeconds: -75 },
    })
    expect(others.every(({ lateSeconds }) => lateSeconds !== null && lateSeconds <= 0)).toBe(true)
  })

  it('counts lateness from when the place was free', () => {
    const { oven, items } = readyDay(plan, session)
    oven('bake-in', one, minutes(1))
    oven('bake-out', one, minutes(5))
    const [next, afterNext] = items(minutes(8))
    expect(next && line(next)).toBe(`start ${two}`)
    expect(next).toMatchObject({ dueAt: seconds(5 * 60 + 75), lateSeconds: 105 })
    // Not in yet at minute 8, the second piece keeps the third waiting from there.
    expect(afterNext).toMatchObject({ unit: { id: three }, dueAt: seconds(8 * 60 + 260 + 75) })
  })

  it('keeps no place for a piece that was lost and never said to come out', () => {
    const { log, oven, items } = readyDay(plan, session)
    oven('bake-in', one, minutes(1))
    log({ kind: 'failure', what: 'not-served' }, { about: { kind: 'piece', id: one } })
    expect(items(minutes(2))[0]).toMatchObject({ unit: { id: two }, dueAt: minutes(0) })
  })
})

describe('an oven for two pieces at once', () => {
  const plan = madePlan({ placesPerLoad: 2, sparePieces: 1, warmUpPiece: false })
  const session = madeSession(plan)
  const loaded = session.dealt.loads.flatMap((load) => load.pieceIds)
  const [one = '', two = '', three = '', four = ''] = loaded

  it('fills the free place, sends the next load in when the first is out, and a spare piece last', () => {
    const { oven, items } = readyDay(plan, session)
    oven('bake-in', one, minutes(0))
    expect(items(minutes(1))[0]).toMatchObject({
      unit: { id: two },
      do: 'start',
      dueAt: minutes(0),
    })
    oven('bake-in', two, minutes(1))
    const now = items(minutes(2))
    expect(now.slice(0, 4).map(line)).toEqual([
      `end ${one}`,
      `end ${two}`,
      `start ${three}`,
      `start ${four}`,
    ])
    // The next load is in once both are out, at minutes 4 and 5, and the oven is as hot again.
    expect(now.slice(2, 4).map(({ dueAt }) => dueAt)).toEqual([
      seconds(5 * 60 + 75),
      seconds(5 * 60 + 75),
    ])
    const spares = session.pieces.filter(({ role }) => role === 'spare').map(({ id }) => id)
    expect(new Set(now.slice(-spares.length).map(({ unit }) => unit.id))).toEqual(new Set(spares))
  })

  it('calls a piece late that had a place all along, beside pieces that were baked one by one', () => {
    const { oven, items } = readyDay(plan, session)
    oven('bake-in', one, minutes(0))
    oven('bake-out', one, minutes(4))
    oven('bake-in', three, minutes(4))
    const left = items(minutes(6)).find(({ unit }) => unit.id === two)
    expect(left).toMatchObject({ dueAt: minutes(0), lateSeconds: 360 })
  })
})

it('waits with a dough that is baked whole until all its pieces have a place', () => {
  const made = madePlan()
  const whole = madePlan({
    steps: [nth(made.steps, 0), { ...nth(made.steps, 4), per: 'batch' }],
    flights: 1,
    warmUpPiece: false,
  })
  const session = madeSession(whole)
  const [first = '', second = ''] = session.dealt.doughOrder
  const { events, log } = madeLog()
  const about = (id: string) => ({ kind: 'batch', id }) as const
  for (const id of [first, second]) {
    log({ kind: 'step-started', stepId: 'mix', repeat: 1 }, { about: about(id), at: minutes(0) })
    log({ kind: 'step-stopped', stepId: 'mix', repeat: 1 }, { about: about(id), at: minutes(8) })
  }
  const bake = { kind: 'step-started', stepId: 'bake', repeat: 1 } as const
  log(bake, { about: about(first), at: minutes(9) })
  const dueAt = (placesPerLoad: number) =>
    agenda(session, { ...whole, placesPerLoad }, effectiveEvents(events), minutes(10)).find(
      ({ unit }) => unit.id === second,
    )?.dueAt
  expect(dueAt(1)).toBe(seconds(13 * 60 + 75))
  // A place that is free beside another load stays so: loads go in one after another.
  expect(dueAt(2)).toBe(seconds(13 * 60 + 75))
})

it('lets nothing in beside a piece that wants the oven at another temperature', () => {
  const made = madePlan({ placesPerLoad: 4, warmUpPiece: false, flights: 1 })
  const plan = {
    ...made,
    factor: { ...made.factor, acts: { on: 'bake-temperature' as const, stepId: 'bake' } },
    levels: made.levels.map((level, at) => ({ ...level, value: at < 2 ? 220 : 250 })),
  }
  const session = madeSession(plan)
  const warmthOf = (id: string) => {
    const { levelId } = session.pieces.find((piece) => piece.id === id) ?? {}
    return plan.levels.find((level) => level.id === levelId)?.value
  }
  const order = session.dealt.loads.flatMap((load) => load.pieceIds)
  const [first = ''] = order
  const { oven, items } = readyDay(plan, session)
  oven('bake-in', first, minutes(0))
  const dues = items(minutes(1)).flatMap(({ do: what, unit, dueAt }) =>
    what === 'start' ? [[warmthOf(unit.id) === warmthOf(first), dueAt]] : [],
  )
  expect(dues.filter(([alike]) => alike)).toEqual([[true, minutes(0)]])
  expect(dues.filter(([alike]) => !alike).every(([, dueAt]) => Number(dueAt) >= minutes(4))).toBe(
    true,
  )
})
