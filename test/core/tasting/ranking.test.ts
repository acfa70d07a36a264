import { describe, expect, test } from 'vitest'
import {
  placesOf,
  pressedCode,
  rankedText,
  rankingTrouble,
  readRanked,
} from '@/core/seal/blind/ranked-codes.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { tasterOrder } from '@/core/tasting/taster-order.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { tasterProblems } from '@/core/trial/taster-problems.ts'
import { rankingTroubleText } from '@/core/wording/tasting/ranking-text.ts'
import { madePlan } from '../made-plan.ts'
import { madeSession } from '../session/made-session.ts'
import { madeTasting } from './made-tasting.ts'

const codes = ['218', '521', '877']

describe('an order of codes', () => {
  test('is pressed code by code; a second press takes one out, and what came after moves up', () => {
    const pressed = ['521', '877', '218'].reduce(
      (ranked, code) => pressedCode(ranked, code, false),
      [] as string[][],
    )
    expect(pressed).toEqual([['521'], ['877'], ['218']])
    expect(pressedCode(pressed, '521', false)).toEqual([['877'], ['218']])
    expect(pressedCode([['521']], '877', true)).toEqual([['521', '877']])
    // Nothing stands yet that a place could be shared with.
    expect(pressedCode([], '877', true)).toEqual([['877']])
  })

  test('is kept as text and read back, whatever is typed between the codes', () => {
    const ranked = [['521'], ['877', '218']]
    expect(rankedText(ranked)).toBe('521 877=218')
    for (const text of ['521 877=218', ' 521, 877 = 218 ', '521;877= 218'])
      expect(readRanked(text)).toEqual(ranked)
    expect(readRanked('')).toEqual([])
  })

  test('says what stands between it and the seal, naming the codes', () => {
    const said = (text: string, ties = false) => {
      const trouble = rankingTrouble(readRanked(text), { codes, ties })
      return trouble && rankingTroubleText(trouble)
    }
    expect(said('521 877 218')).toBeNull()
    expect(said('521=877 218', true)).toBeNull()
    expect(said('521=877 218')).toBe(
      '521 and 877 share a place, and this order has none to share: put one before the other.',
    )
    expect(said('521')).toBe('The order still lacks 218 and 877.')
    expect(said('521 877 521')).toBe('The order names 521 twice; each stands in it once.')
    expect(said('521 877 219')).toBe('The order names 219, which is none of the samples.')
  })

  test('gives those that share a place the mean of the places they take up', () => {
    // By hand: first; second and third shared, (2 + 3) / 2.
    expect(Object.fromEntries(placesOf([['521'], ['877', '218']]))).toEqual({
      521: 1,
      877: 2.5,
      218: 2.5,
    })
  })
})

describe('the order at the table', () => {
  const ranking = { ties: true, asks: 'Crispest first, please.' }
  const plan = madePlan({ flights: 1, atTable: { ranking, asksUsual: true, restSeconds: 30 } })

  test('is asked when all is scored, before the guess, over the codes in rising order', () => {
    const session = madeSession(plan)
    const { records, present, seal } = madeTasting(plan, [session])
    present('ta-1')
    const order = tasterOrder(session, 'ta-1')
    for (const { id } of order) seal('ta-1', { kind: 'serving', id })
    const own = () =>
      tastingState(records, 'session-a').tasters.find(({ tasterId }) => tasterId === 'ta-1')
    expect(own()?.missing.map(({ about }) => about.kind)).toEqual(['ranking', 'session'])
    const rising = order.map(({ code }) => code).sort((one, other) => Number(one) - Number(other))
    const view = blindView(records, 'session-a', 'ta-1')
    expect(view.ranking).toEqual({ ...ranking, codes: rising, done: false })
    expect(view.rest).toEqual({ restSeconds: 30 })
    seal('ta-1', { kind: 'ranking', id: 'session-a' }, { answers: [], ranked: [rising] })
    expect(own()?.missing.map(({ about }) => about.kind)).toEqual(['session'])
    expect(blindView(records, 'session-a', 'ta-1')).toMatchObject({
      ranking: { done: true },
      guess: { done: false },
    })
  })

  test('is not asked of a single serving, nor where it is not planned', () => {
    const { records, present, log } = madeTasting(plan)
    present('ta-1')
    const session = madeSession(plan)
    for (const { pieceId } of tasterOrder(session, 'ta-1').slice(1))
      log({ kind: 'failure', what: 'not-served' }, { about: { kind: 'piece', id: pieceId } })
    expect(blindView(records, 'session-a', 'ta-1').ranking).toBeNull()
    expect(blindView(madeTasting().records, 'session-a', 'ta-1').ranking).toBeNull()
  })
})

test('words of the baker’s own that name a level are asked about, where the tasters would read them', () => {
  const asked = (words: string) =>
    tasterProblems(
      madePlan({
        atTable: { ranking: { ties: false, asks: words } },
        tellApart: { test: 'triangle', levelIds: ['lv-low', 'lv-top'], asks: words },
      }),
    ).flatMap(({ path, reason }) => (reason === 'words-name-level' ? [path] : []))
  expect(asked('Which one is odd?')).toEqual([])
  expect(asked('Which one is the 72?')).toEqual(['/tellApart/asks', '/atTable/ranking/asks'])
})
