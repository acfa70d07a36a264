import { expect, test } from 'vitest'
import { withoutEach } from '@/core/findings/judged/without-each.ts'
import { ballotChanges } from '@/core/tasting/ballot-changes.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { observations } from '@/core/whole-trial/observations.ts'
import { changeHead, saidText } from '@/core/wording/tasting/ballot-changes-text.ts'
import { madePlan } from '../made-plan.ts'
import { madeSession, nth } from '../session/made-session.ts'
import { answers, madeTasting } from './made-tasting.ts'

test('a ballot changed, voided or late keeps what it first said, who and why', () => {
  const [first, second, third] = madeSession().dealt.servings
  if (!first || !second || !third) throw new Error('three servings')
  const { records, seal } = madeTasting()
  const about = (id: string) => ({ kind: 'serving' as const, id })
  const one = seal('ta-1', about(first.id), { answers: answers(4, 2) })
  seal('ta-1', about(first.id), {
    answers: answers(6, 2),
    replaces: one.id,
    change: { by: 'the taster', because: 'mixed up two plates' },
  })
  const two = seal('ta-2', about(second.id))
  seal('ta-2', about(second.id), {
    replaces: two.id,
    change: { by: 'BM', because: 'had a cold', voids: true },
  })
  seal('ta-3', about(third.id), { late: true, answers: answers(9, null, 'none left') })
  const changes = ballotChanges(records)
  expect(changes.map(({ what, by, because }) => [what, by, because])).toEqual([
    ['changed', 'the taster', 'mixed up two plates'],
    ['voided', 'BM', 'had a cold'],
    ['late', null, null],
  ])
  expect(changes.map(({ original }) => original?.answers)).toEqual([
    answers(4, 2),
    answers(7, 3),
    undefined,
  ])
  expect(nth(changes, 1).now).toBeNull()
  expect(effectiveBallots(records.ballots).map(({ tasterId }) => tasterId)).toEqual(['ta-1'])
  expect(changeHead(nth(changes, 0), (id) => id)).toBe(
    `ta-1, ${first.code}, session 1: changed by the taster: mixed up two plates`,
  )
  const named = [
    { id: 'liking', name: 'Liking' },
    { id: 'salty', name: 'Saltiness' },
  ]
  expect(saidText(nth(changes, 2).now, named)).toBe('Liking 9, Saltiness left out (none left)')
  expect(saidText(null, named)).toBe('nothing')
})

test('a changed, voided or late order, pick or guess is told as what it is', () => {
  const plan = madePlan({
    ...{ serving: 'rested', flights: 1, atTable: { ranking: { ties: true } } },
    tellApart: { test: 'triangle', levelIds: ['lv-low', 'lv-high'] },
  })
  const session = madeSession(plan)
  const { records, seal } = madeTasting(plan, [session])
  const set = nth(session.dealt.sets, 0)
  const own = { answers: [] }
  const order = { kind: 'ranking' as const, id: session.id }
  const first = seal('ta-1', order, { ...own, ranked: [['521'], ['877', '402']] })
  seal('ta-1', order, {
    ...{ ...own, ranked: [['877'], ['521'], ['402']], replaces: first.id },
    change: { by: 'the taster', because: 'a later word of the same phone' },
  })
  seal('ta-2', order, { ...own, ranked: [['402'], ['521'], ['877']], late: true })
  const codes = set.samples.map(({ code }) => code)
  const pick = { kind: 'set' as const, id: set.id }
  const picked = seal('ta-1', pick, { ...own, pickedCode: nth(codes, 1) })
  const change = { by: 'BM', because: 'two plates mixed up', voids: true }
  seal('ta-1', pick, { ...own, replaces: picked.id, change })
  const guess = { kind: 'session' as const, id: session.id }
  seal('ta-2', guess, { ...own, late: true })
  seal('ta-3', guess, { ...own, pickedCode: '521', late: true })
  const changes = ballotChanges(records)
  const told = changes.map((each) => {
    const head = changeHead(each, (id) => id)
    return `${head} | ${saidText(each.original, [])} | ${saidText(each.now, [])}`
  })
  expect(told).toEqual([
    'ta-1, the order, session 1: changed by the taster: a later word of the same phone | 521, 877 = 402 | 877, 521, 402',
    'ta-2, the order, session 1: came late before the codes were open | nothing | 402, 521, 877',
    `ta-1, the set ${codes.join(' · ')}, session 1: voided by BM: two plates mixed up | picked ${codes[1]} | nothing`,
    'ta-2, the guess at the end, session 1: came late before the codes were open | nothing | no idea',
    'ta-3, the guess at the end, session 1: came late before the codes were open | nothing | 521 is the usual one',
  ])
})

test('a sheet typed in late is told by who typed it and whether the codes were open; it stands in no finding', () => {
  const { records, seal, log } = madeTasting()
  const [first, second] = madeSession().dealt.servings
  if (!first || !second) throw new Error('two servings')
  const about = (id: string) => ({ kind: 'serving' as const, id })
  const cameBy = { way: 'paper' as const, typedBy: 'BM' }
  log({ kind: 'tasting-closed', reason: 'the last train' })
  seal('ta-1', about(first.id), { late: true, cameBy, at: 6_000_000 })
  const before = tastingState(records, 'session-a')
  log({ kind: 'unsealed' }, { at: 7_000_000 })
  seal('ta-1', about(second.id), { late: true, cameBy, at: 8_000_000 })
  expect(ballotChanges(records).map((change) => changeHead(change, (id) => id))).toEqual([
    `ta-1, ${first.code}, session 1: came late before the codes were open, typed from paper by BM`,
    `ta-1, ${second.code}, session 1: came late when the codes were open, typed from paper by BM`,
  ])
  expect(before.tasters.map(({ answered }) => answered)).toEqual([0, 0, 0])
  const seen = observations(records, { unsealed: false })
  expect(seen.ok && seen.rows.filter(({ tasterId }) => tasterId !== null)).toEqual([])
})

test('means with everybody and without each taster, each person counting once', () => {
  const row = (tasterId: string, levelId: string, value: number) => ({ tasterId, levelId, value })
  // AN scores low twice (mean 3) and high 5; BO low 8, high 6. All: low (3 + 8) / 2 = 5.5, high 5.5: no single highest.
  const rows = [row('AN', 'low', 2), row('AN', 'low', 4), row('AN', 'high', 5)]
  rows.push(row('BO', 'low', 8), row('BO', 'high', 6))
  expect(withoutEach(rows, ['low', 'high', 'never'])).toEqual([
    { tasterId: null, means: [5.5, 5.5, null], highest: null },
    { tasterId: 'AN', means: [8, 6, null], highest: 0 },
    { tasterId: 'BO', means: [3, 5, null], highest: 1 },
  ])
})
