import { expect, test } from 'vitest'
import { withoutEach } from '@/core/findings/judged/without-each.ts'
import { ballotChanges } from '@/core/tasting/ballot-changes.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { observations } from '@/core/whole-trial/observations.ts'
import { answersText, changeHead } from '@/core/wording/tasting/ballot-changes-text.ts'
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
  expect(changes.map(({ original }) => original)).toEqual([answers(4, 2), answers(7, 3), null])
  expect(nth(changes, 1).now).toBeNull()
  expect(effectiveBallots(records.ballots).map(({ tasterId }) => tasterId)).toEqual(['ta-1'])
  expect(changeHead(nth(changes, 0), (id) => id)).toBe(
    `ta-1, ${first.code}, session 1: changed by the taster: mixed up two plates`,
  )
  const named = [
    { id: 'liking', name: 'Liking' },
    { id: 'salty', name: 'Saltiness' },
  ]
  expect(answersText(nth(changes, 2).now, named)).toBe('Liking 9, Saltiness left out (none left)')
  expect(answersText(null, named)).toBe('nothing')
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
