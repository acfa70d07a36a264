import { describe, expect, test } from 'vitest'
import { restAfter } from '@/core/seal/blind/rest-after.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { tasterOrder } from '@/core/tasting/taster-order.ts'
import { tasterQuestions } from '@/core/tasting/taster-questions.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { observations } from '@/core/whole-trial/observations.ts'
import { madePlan } from '../made-plan.ts'
import { madeSession, nth } from '../session/made-session.ts'
import { answers, madeTasting } from './made-tasting.ts'

const serving = (id: string) => ({ kind: 'serving' as const, id })

describe('what came to a taster', () => {
  test('numbers stay whole after a failed serving, and position counts what was tasted', () => {
    const session = madeSession()
    const { records, log, present, seal } = madeTasting()
    present('ta-1')
    const [first, second, third] = tasterOrder(session, 'ta-1')
    if (!first || !second || !third) throw new Error('three servings at least')
    log({ kind: 'failure', what: 'not-served' }, { about: { kind: 'piece', id: second.pieceId } })
    seal('ta-1', serving(first.id))
    seal('ta-1', serving(third.id))
    const { servings } = blindView(records, 'session-a', 'ta-1')
    expect(servings.map(({ position }) => position)).toEqual(servings.map((_, index) => index + 1))
    expect(servings.map(({ code }) => code)).not.toContain(second.code)
    const seen = observations(records, { unsealed: true })
    if (!seen.ok) throw new Error(seen.reason)
    const own = seen.rows.filter((row) => row.responseId === 'liking' && row.tasterId === 'ta-1')
    expect(own.map(({ position }) => position)).toEqual([1, 2])
    const lost = seen.gaps.find(({ pieceId }) => pieceId === second.pieceId)
    expect(lost).toMatchObject({ position: null, because: 'not-served' })
  })

  test('the guess of the usual one is asked last, and “no idea” is an answer', () => {
    const plan = madePlan({ atTable: { asksUsual: true } })
    const { records, present, seal } = madeTasting(plan)
    present('ta-1')
    for (const { id } of tasterOrder(madeSession(plan), 'ta-1')) seal('ta-1', serving(id))
    const before = tastingState(records, 'session-a').tasters.find(
      ({ tasterId }) => tasterId === 'ta-1',
    )
    expect(before?.missing.map(({ about }) => about.kind)).toEqual(
      expect.arrayContaining(['session']),
    )
    expect(blindView(records, 'session-a', 'ta-1').guess).toEqual({ done: false })
    seal('ta-1', { kind: 'session', id: 'session-a' }, { answers: [] })
    expect(blindView(records, 'session-a', 'ta-1').guess).toEqual({ done: true })
  })

  test('a repeated serving is asked like any other and is no row of the findings', () => {
    const plan = madePlan({ serving: 'rested', flights: 1, atTable: { again: ['lv-mid'] } })
    const session = madeSession(plan)
    const { records, present, seal } = madeTasting(plan, [session])
    present('ta-1')
    const order = tasterOrder(session, 'ta-1')
    for (const { id } of order) seal('ta-1', serving(id))
    expect(order).toHaveLength(5)
    const seen = observations(records, { unsealed: true })
    const rows = seen.ok ? seen.rows.filter(({ responseId }) => responseId === 'liking') : []
    expect(rows).toHaveLength(4)
    expect(new Set(rows.map(({ levelId }) => levelId)).size).toBe(4)
  })

  test('who knows is left out of liking while another tastes blind, and said', () => {
    const plan = madePlan({
      tasters: [
        { tasterId: 'ta-1', knows: true },
        { tasterId: 'ta-2', knows: false },
      ],
    })
    const session = madeSession(plan)
    const { records, present, seal } = madeTasting(plan, [session])
    for (const id of ['ta-1', 'ta-2']) {
      present(id)
      seal(id, serving(nth(tasterOrder(session, id), 0).id), { answers: answers(7, 3) })
    }
    const seen = observations(records, { unsealed: true })
    if (!seen.ok) throw new Error(seen.reason)
    const of = (responseId: string) =>
      seen.rows.filter((row) => row.responseId === responseId).map(({ tasterId }) => tasterId)
    expect(of('liking')).toEqual(['ta-2'])
    expect(of('salty')).toEqual(['ta-1', 'ta-2'])
    expect(seen.gaps.filter(({ because }) => because === 'knows')).toHaveLength(1)
  })
})

test('liking is asked first, whatever the order of the plan', () => {
  const plan = madePlan()
  const turned = { responses: plan.responses.toReversed() }
  expect(tasterQuestions(turned)[0]?.id).toBe('liking')
})

test('after so many servings the rest is the longer pause', () => {
  const rest = { restSeconds: 60, pauseAfter: 3, pauseSeconds: 300 }
  expect([1, 2, 3, 4, 5, 6].map((tasted) => restAfter(rest, tasted))).toEqual([
    60, 60, 300, 60, 60, 300,
  ])
  expect(restAfter({}, 3)).toBe(0)
})
