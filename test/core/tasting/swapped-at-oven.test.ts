import { expect, test } from 'vitest'
import { loggedItems } from '@/core/fairness/fairness-of-trial.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { observations } from '@/core/whole-trial/observations.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import { madePlan } from '../made-plan.ts'
import { madeSession, nth } from '../session/made-session.ts'
import { answers, madeTasting } from './made-tasting.ts'

const minute = 60_000
const session = madeSession()
const order = nth(session.dealt.tasterOrders, 0).servingIds
const servingOf = (id: string) => {
  const found = session.dealt.servings.find((one) => one.id === id)
  if (!found) throw new Error(`no serving ${id}`)
  return found
}

/** The first flight, its first two pieces launched the other way round; all baked 5 min and scored 3 min after. */
function swappedDay(plan = madePlan()) {
  const { records, log, seal, present } = madeTasting(plan, [session])
  present('ta-1')
  const [first = '', second = '', ...rest] = order
  const baked = [second, first, ...rest]
  const bake = (id: string, turn: number) => {
    const about = { kind: 'piece', id: servingOf(id).pieceId } as const
    log({ kind: 'bake-in' }, { about, at: turn * 10 * minute })
    log({ kind: 'bake-out' }, { about, at: (turn * 10 + 5) * minute })
  }
  const score = (id: string, turn: number) => {
    const startedAt = (turn * 10 + 8) * minute
    seal(
      'ta-1',
      { kind: 'serving', id },
      { startedAt, at: startedAt + minute, answers: answers(6, 4) },
    )
  }
  const view = () => blindView(records, session.id, 'ta-1')
  return { records, log, seal, baked, bake, score, view }
}

test('the code that is asked for next is the one that leaves the oven next, where the oven order was swapped', () => {
  const { baked, bake, score, view } = swappedDay()
  const code = (turn: number) => servingOf(nth(baked, turn)).code
  // Nothing is launched: as drawn.
  expect(view().nextCode).toBe(code(1))
  bake(nth(baked, 0), 0)
  expect(view().nextCode).toBe(code(0))
  score(nth(baked, 0), 0)
  expect(view().nextCode).toBe(code(1))
  bake(nth(baked, 1), 1)
  score(nth(baked, 1), 1)
  const { servings } = view()
  expect(servings.slice(0, 2)).toMatchObject([
    { code: code(0), position: 1, done: true },
    { code: code(1), position: 2, done: true },
  ])
  expect(servings.map(({ position }) => position)).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
})

test('rested servings keep the order they were dealt to each mouth, whatever the oven did', () => {
  const plan = madePlan({ serving: 'rested' })
  const { baked, bake, view } = swappedDay(plan)
  for (const [turn, id] of baked.entries()) bake(id, turn)
  expect(view().servings.map(({ code }) => code)).toEqual(order.map((id) => servingOf(id).code))
})

test('findings and fairness check go by the order that was, and say that it is another than the drawn one', () => {
  const { records, log, baked, bake, score } = swappedDay()
  for (const [turn, id] of baked.entries()) {
    bake(id, turn)
    score(id, turn)
  }
  log({ kind: 'unsealed' })
  const seen = observations(records, { unsealed: true })
  if (!seen.ok) throw new Error(seen.reason)
  const positionOf = (id: string) =>
    seen.rows.find(({ pieceId }) => pieceId === servingOf(id).pieceId)?.position
  expect(baked.map(positionOf)).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
  const items = loggedItems({ ...wholeTrialOf(), ...records })
  expect(items.find(({ code }) => code === 'departed')?.data).toMatchObject({ order: 1 })
  // Out of the oven 3 min before each mouth, as logged: no level waited longer.
  const minutes = items.find(({ code }) => code === 'mouth-minutes')?.data
  expect(minutes).toMatchObject({ low: 3, high: 3 })
})

test('what a taster’s own phone says of the order of tasting stands before the oven’s', () => {
  const { records, log, bake, seal } = swappedDay()
  for (const [turn, id] of order.entries()) bake(id, turn)
  const [first = '', second = '', third = '', ...rest] = order
  // The third was taken before the second, the last by paper without a word of when.
  for (const [at, id] of [first, third, second, ...rest.slice(0, -1)].entries())
    seal('ta-1', { kind: 'serving', id }, { position: at + 1, answers: answers(6, 4) })
  seal('ta-1', { kind: 'serving', id: nth(rest, rest.length - 1) }, { answers: answers(6, 4) })
  log({ kind: 'unsealed' })
  const seen = observations(records, { unsealed: true })
  if (!seen.ok) throw new Error(seen.reason)
  const placeOf = (id: string) => {
    const { pieceId } = servingOf(id)
    const row = seen.rows.find((each) => each.pieceId === pieceId && each.tasterId === 'ta-1')
    return [row?.position, row?.positionInFlight]
  }
  expect([first, third, second].map(placeOf)).toEqual([
    [1, 1],
    [2, 2],
    [3, 3],
  ])
  expect(rest.map((id) => placeOf(id)[0])).toEqual([4, 5, 6, 7, 8])
})
