import { describe, expect, test } from 'vitest'
import { chanceFrom, shuffled } from '@/core/design/chance.ts'
import { orderBalance } from '@/core/design/order-balance.ts'
import { tasterOrders } from '@/core/design/taster-orders.ts'
import { dealSets } from '@/core/session/deal-sets.ts'
import type { Session, TellApartSet } from '@/core/session/session-record.ts'
import { tasterOrder } from '@/core/tasting/taster-order.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { madePlan } from '../made-plan.ts'
import { madeSession, nth } from './made-session.ts'

const rested = (change: Partial<Plan> = {}) =>
  madePlan({ serving: 'rested', flights: 1, ...change })

const linesOf = (session: Session, tasterId: string) =>
  tasterOrder(session, tasterId).map(({ pieceId, repeats }) => {
    const piece = session.pieces.find(({ id }) => id === pieceId)
    return `${piece?.levelId}${repeats === undefined ? '' : ' again'}`
  })

describe('orders of rested servings', () => {
  // A line cannot stand at a position more evenly than floor and ceiling of orders / lines: that is the bound. Pairs follow:
  // a Williams square of an even number holds each ordered pair once, one of an odd number some pairs twice and its mirror the
  // others, so counts lie at most 1 and 2 apart.
  test('2 to 10 lines, 1 to 20 tasters, 1 to 4 sessions: as even as arithmetic allows', () => {
    const uneven: string[] = []
    for (let lines = 2; lines <= 10; lines += 1)
      for (let tasters = 1; tasters <= 20; tasters += 1) {
        const labelling = shuffled(
          chanceFrom(7, 0, lines),
          Array.from({ length: lines }, (_, index) => index),
        )
        const orders: number[][] = []
        for (let session = 1; session <= 4; session += 1) {
          orders.push(
            ...tasterOrders({
              chance: chanceFrom(7, session),
              labelling,
              count: tasters,
              earlier: orders,
            }),
          )
          const { leastAt, mostAt, leastBefore, mostBefore } = orderBalance(orders, lines)
          const pairs = lines % 2 === 0 ? 1 : 2
          if (mostAt - leastAt > 1 || mostBefore - leastBefore > pairs)
            uneven.push(
              `${lines} × ${tasters} × ${session}: ${leastAt}–${mostAt}, ${leastBefore}–${mostBefore}`,
            )
        }
      }
    expect(uneven).toEqual([])
  })

  test('what is dealt keeps it, the hidden duplicate counted as a line: 2 to 10 lines, up to 20 tasters, 4 sessions', () => {
    const uneven: string[] = []
    for (let lines = 2; lines <= 10; lines += 1)
      for (const count of [1, 3, 8, 20]) {
        const again = lines > 3
        const levels = Array.from({ length: again ? lines - 1 : lines }, (_, index) => ({
          ...{ id: `lv-${index}`, value: 60 + index * 2, label: String(60 + index * 2) },
          control: index === 0,
        }))
        const tasters = Array.from({ length: count }, (_, at) => ({
          ...{ tasterId: `t${at}`, knows: false },
        }))
        const plan = rested({
          ...{ levels, tasters, tellApart: null },
          ...(again ? { atTable: { again: ['lv-1'] } } : {}),
        })
        const names = [...levels.map(({ id }) => id), 'lv-1 again']
        const sessions: Session[] = []
        for (let number = 1; number <= 4; number += 1) {
          sessions.push(madeSession(plan, [...sessions]))
          const orders = sessions.flatMap((session) =>
            tasters.map(({ tasterId }) =>
              linesOf(session, tasterId).map((line) => names.indexOf(line)),
            ),
          )
          const { leastAt, mostAt } = orderBalance(orders, lines)
          if (mostAt - leastAt > 1)
            uneven.push(`${lines} × ${count} × ${number}: ${leastAt}–${mostAt}`)
        }
      }
    expect(uneven).toEqual([])
  })

  test('dealt sessions keep it: five levels, four tasters, three sessions', () => {
    const plan = rested({
      levels: ['a', 'b', 'c', 'd', 'e'].map((id, index) => ({
        id,
        value: 60 + index * 3,
        label: String(60 + index * 3),
        control: index === 2,
      })),
      tasters: ['t1', 't2', 't3', 't4'].map((tasterId) => ({ tasterId, knows: false })),
    })
    const sessions: Session[] = []
    for (let number = 1; number <= 3; number += 1) sessions.push(madeSession(plan, [...sessions]))
    const ids = plan.levels.map(({ id }) => id)
    const orders = sessions.flatMap((session) =>
      plan.tasters.map(({ tasterId }) => linesOf(session, tasterId).map((id) => ids.indexOf(id))),
    )
    const { leastAt, mostAt } = orderBalance(orders, 5)
    expect([leastAt, mostAt]).toEqual([2, 3])
  })
})

describe('sets to tell apart', () => {
  // Six orders of a triangle, four of a duo-trio, two of a pair: over all sets none can come more evenly than floor and ceiling
  // of sets / orders.
  test('1 to 20 tasters, 1 to 4 sessions: each order of the test equally often or once more', () => {
    const [low, , high] = madePlan().levels
    if (!low || !high) throw new Error('three levels')
    const uneven: string[] = []
    for (const [test, orders] of [
      ['triangle', 6],
      ['duo-trio', 4],
      ['paired', 2],
    ] as const)
      for (let count = 1; count <= 20; count += 1) {
        const tasters = Array.from({ length: count }, (_, at) => ({ tasterId: `t${at}` }))
        const plan = madePlan({
          tasters: tasters.map((taster) => ({ ...taster, knows: false })),
          tellApart: { test, levelIds: [high.id, low.id] },
        })
        const codes = Array.from({ length: count * 3 }, (_, at) => String(100 + at))
        const sets: TellApartSet[] = []
        for (let session = 1; session <= 4; session += 1) {
          sets.push(...dealSets(plan, chanceFrom(11, session), codes, () => 'set', [...sets]))
          const times = new Map<string, number>()
          for (const { samples, answerCode } of sets) {
            const order = samples.map(({ levelId }) => levelId).join()
            const answer = samples.findIndex(({ code }) => code === answerCode)
            times.set(`${order} ${answer}`, (times.get(`${order} ${answer}`) ?? 0) + 1)
          }
          const all = [...times.values(), ...new Array(orders - times.size).fill(0)]
          if (times.size > orders || Math.max(...all) - Math.min(...all) > 1)
            uneven.push(`${test}, ${count} tasters, session ${session}: ${all.join(' ')}`)
        }
      }
    expect(uneven).toEqual([])
  })

  test('what is dealt session by session keeps it: five tasters, four sessions of a triangle', () => {
    const plan = rested({
      tasters: ['t1', 't2', 't3', 't4', 't5'].map((tasterId) => ({ tasterId, knows: false })),
      tellApart: { test: 'triangle', levelIds: ['lv-low', 'lv-high'] },
    })
    const sessions: Session[] = []
    for (let number = 1; number <= 4; number += 1) sessions.push(madeSession(plan, [...sessions]))
    const times = new Map<string, number>()
    for (const { samples } of sessions.flatMap(({ dealt }) => dealt.sets)) {
      const order = samples.map(({ levelId }) => levelId).join()
      times.set(order, (times.get(order) ?? 0) + 1)
    }
    // Twenty sets, six orders: three each, two of them once more.
    expect([...times.values()].toSorted((one, other) => one - other)).toEqual([3, 3, 3, 3, 4, 4])
  })
})

describe('a hidden duplicate', () => {
  const plan = rested({ atTable: { again: ['lv-mid'] } })
  const session = madeSession(plan)

  test('is a second serving of the same piece under a code of its own', () => {
    const again = session.dealt.servings.filter(({ repeats }) => repeats !== undefined)
    expect(again).toHaveLength(1)
    const twin = session.dealt.servings.find(({ id }) => id === again[0]?.repeats)
    expect(again[0]?.pieceId).toBe(twin?.pieceId)
    expect(again[0]?.code).not.toBe(twin?.code)
    expect(session.pieces.find(({ id }) => id === twin?.pieceId)?.levelId).toBe('lv-mid')
  })

  test('stands in every order among the others, at different positions', () => {
    const places = plan.tasters.map(({ tasterId }) => linesOf(session, tasterId))
    for (const lines of places) expect(lines).toHaveLength(5)
    expect(new Set(places.map((lines) => lines.indexOf('lv-mid again'))).size).toBe(places.length)
  })

  test('takes a code, and none where servings are hot', () => {
    const hot = madeSession(madePlan({ serving: 'as-baked', atTable: { again: ['lv-mid'] } }))
    expect(hot.dealt.servings.every(({ repeats }) => repeats === undefined)).toBe(true)
  })
})

test('two goes: all of the first, then all again in another order', () => {
  const plan = rested({ tasters: [{ tasterId: 'self', knows: false }] })
  const goes = { ...plan, atTable: { again: plan.levels.map(({ id }) => id) } }
  const lines = linesOf(madeSession(goes), 'self')
  const [first, second] = [lines.slice(0, 4), lines.slice(4).map((line) => line.split(' ')[0])]
  expect(lines).toHaveLength(8)
  expect(first.every((line) => !line.endsWith('again'))).toBe(true)
  expect(new Set(first)).toEqual(new Set(second))
  expect(new Set(second).size).toBe(4)
  expect(first).not.toEqual(second)
})

test('later sessions complete the orders of the earlier ones, the duplicate among them', () => {
  const plan = rested({
    tasters: [{ tasterId: 'self', knows: false }],
    atTable: { again: ['lv-mid'] },
  })
  const sessions: Session[] = []
  for (let number = 1; number <= 5; number += 1) sessions.push(madeSession(plan, [...sessions]))
  const at = sessions.map((session) => linesOf(session, 'self').indexOf('lv-mid again'))
  expect(at.toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3, 4])
  expect(nth(sessions, 0).dealt.drawVersion).toBe(6)
})
