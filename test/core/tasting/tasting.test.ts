import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkAnswers } from '@/core/seal/blind/check-answers.ts'
import { sessionSealed } from '@/core/seal/sealed.ts'
import { blindView, servingByCode } from '@/core/tasting/blind-view.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { tasterQuestions } from '@/core/tasting/taster-questions.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { madePlan } from '../made-plan.ts'
import { madeSession, nth } from '../session/made-session.ts'
import { answers, madeTasting } from './made-tasting.ts'

const session = madeSession()
const order = nth(session.dealt.tasterOrders, 0).servingIds
const serving = (id: string) => ({ kind: 'serving', id }) as const
const codeOf = (id: string) => session.dealt.servings.find((one) => one.id === id)?.code

describe('tastingState', () => {
  it('expects the counted servings of those present, and offers the next by code', () => {
    const { records, seal, present } = madeTasting()
    expect(tastingState(records, 'session-a')).toMatchObject({ seal: 'not-begun', begun: false })
    present('ta-1')
    seal('ta-1', serving(nth(order, 0)))
    const state = tastingState(records, 'session-a')
    const [one, two] = state.tasters
    // Four levels in two flights: eight servings, one scored.
    expect(one).toMatchObject({ presence: 'present', expected: 8, answered: 1, complete: false })
    expect(one?.next).toMatchObject({ codes: [codeOf(nth(order, 1))], position: 2 })
    expect(two).toMatchObject({ presence: 'awaited' })
    expect(state).toMatchObject({ seal: 'sealed', complete: false })
    expect(state.missing).toHaveLength(7)
    expect(state.mayUnseal).toEqual({ ok: false, reason: 'ballots-missing', missing: 7 })
  })

  it('is complete when all present are, without failed servings and those who left', () => {
    const { records, seal, present, log } = madeTasting()
    const lost = nth(
      session.dealt.servings.filter((one) => one.id === order[7]),
      0,
    )
    for (const taster of ['ta-1', 'ta-2']) present(taster)
    log({ kind: 'failure', what: 'not-served' }, { about: { kind: 'piece', id: lost.pieceId } })
    for (const id of order.slice(0, 7)) seal('ta-1', serving(id))
    seal('ta-2', serving(nth(order, 0)))
    expect(tastingState(records, 'session-a').missing).toHaveLength(6)
    log({ kind: 'left' }, { about: { kind: 'taster', id: 'ta-2' } })
    log({ kind: 'declined' }, { about: { kind: 'taster', id: 'ta-3' } })
    const state = tastingState(records, 'session-a')
    expect(state).toMatchObject({ complete: true, mayUnseal: { ok: true }, missing: [] })
    expect(state.tasters.map((one) => [one.presence, one.expected])).toEqual([
      ['present', 7],
      ['left', 1],
      ['declined', 0],
    ])
    expect(state.tasters[2]?.knows).toBe(true)
    expect(state.seal).toBe('sealed')
    log({ kind: 'unsealed' })
    expect(tastingState(records, 'session-a').seal).toBe('unsealed')
  })

  it('may be unsealed early only when closed with a reason, and stays sealed until it is', () => {
    const { records, present, seal, log } = madeTasting()
    present('ta-1')
    seal('ta-1', serving(nth(order, 0)))
    log({ kind: 'tasting-closed', reason: 'the tram was late' })
    expect(tastingState(records, 'session-a')).toMatchObject({
      seal: 'closed',
      closedBecause: 'the tram was late',
      complete: false,
      mayUnseal: { ok: true },
    })
    expect(sessionSealed(records, 'session-a')).toBe(true)
    log({ kind: 'unsealed' })
    expect(sessionSealed(records, 'session-a')).toBe(false)
  })

  it('does not count a ballot with a gap that says no why', () => {
    const { records, seal } = madeTasting()
    seal('ta-1', serving(nth(order, 0)), { answers: answers(5, null) })
    seal('ta-1', serving(nth(order, 1)), { answers: answers(null, null, 'burnt my tongue') })
    expect(tastingState(records, 'session-a').tasters[0]).toMatchObject({ answered: 1 })
  })

  it('gives a taster who joined late an order of their own codes', () => {
    const { records, present } = madeTasting()
    present('ta-9')
    const late = tastingState(records, 'session-a').tasters.find((one) => one.tasterId === 'ta-9')
    expect(late).toMatchObject({ late: true, expected: 8, knows: false })
  })

  it('asks for the tell-apart set after the servings', () => {
    const plan = madePlan({ tellApart: { test: 'triangle', levelIds: ['lv-low', 'lv-top'] } })
    const made = madeSession(plan)
    const { records, seal, present, log } = madeTasting(plan, [made])
    present('ta-1')
    for (const id of nth(made.dealt.tasterOrders, 0).servingIds) seal('ta-1', serving(id))
    const own = tastingState(records, 'session-a').tasters[0]
    expect(own).toMatchObject({ expected: 9, answered: 8 })
    expect(own?.next?.codes).toHaveLength(3)
    const set = nth(made.dealt.sets, 0)
    seal('ta-1', { kind: 'set', id: set.id }, { answers: [], pickedCode: set.answerCode })
    expect(tastingState(records, 'session-a').mayUnseal).toEqual({
      ok: false,
      reason: 'tasters-awaited',
      missing: 0,
    })
    for (const id of ['ta-2', 'ta-3']) log({ kind: 'declined' }, { about: { kind: 'taster', id } })
    expect(tastingState(records, 'session-a')).toMatchObject({
      complete: true,
      mayUnseal: { ok: true },
    })
  })
})

describe('effectiveBallots', () => {
  it('lets a replacing ballot stand for the replaced, and the last of several', () => {
    const { records, seal } = madeTasting()
    const about = serving(nth(order, 0))
    seal('ta-1', about, { answers: answers(3, 3) })
    seal('ta-1', about, { answers: answers(4, 3), replaces: 'b-1' })
    seal('ta-2', about)
    seal('ta-2', about, { answers: answers(2, 2), device: 'device-b', at: 1 })
    expect(effectiveBallots(records.ballots).map((ballot) => ballot.id)).toEqual(['b-2', 'b-3'])
    expect(effectiveBallots(records.ballots, 'elsewhere')).toEqual([])
  })

  it('does not depend on the order of arrival', () => {
    const { records, seal } = madeTasting()
    for (const taster of ['ta-1', 'ta-2', 'ta-1', 'ta-1'])
      seal(taster, serving(nth(order, 0)), { device: `device-${taster}` })
    fc.assert(
      fc.property(fc.shuffledSubarray(records.ballots, { minLength: 4 }), (shuffled) => {
        expect(effectiveBallots(shuffled)).toEqual(effectiveBallots(records.ballots))
      }),
    )
  })
})

describe('checkAnswers', () => {
  const questions = tasterQuestions(madePlan()).map(({ id, scale }) => ({ responseId: id, scale }))
  const check = (liking: number | null, salty: number | null, why?: string) => {
    const answer = checkAnswers(answers(liking, salty, why), questions)
    return answer.ok ? [] : answer.troubles.map((one) => `${one.responseId} ${one.reason}`)
  }

  it('takes the ends of the scales and a gap with a why, and nothing beyond', () => {
    expect(check(1, 5)).toEqual([])
    expect(check(9, 1)).toEqual([])
    expect(check(null, 3, 'an allergy')).toEqual([])
    expect(check(null, 3)).toEqual(['liking needs-why'])
    expect(check(null, 3, '  ')).toEqual(['liking needs-why'])
    expect(check(0, 6)).toEqual(['liking out-of-range', 'salty out-of-range'])
    expect(check(4.5, 3)).toEqual(['liking not-whole'])
    expect(check(Number.NaN, 3)).toEqual(['liking out-of-range'])
  })

  it('names what is missing, twice or unknown', () => {
    const wrong = [
      { responseId: 'liking', value: 5 },
      { responseId: 'liking', value: 5 },
      { responseId: 'crust', value: 3 },
    ]
    expect(checkAnswers(wrong, questions)).toEqual({
      ok: false,
      troubles: [
        { responseId: 'liking', reason: 'twice' },
        { responseId: 'salty', reason: 'missing' },
        { responseId: 'crust', reason: 'unknown-response' },
      ],
    })
  })
})

describe('blindView', () => {
  it('holds no level, label, letter, weight, nor the id of a dough, piece or serving', () => {
    const plan = madePlan()
    const { records, present, seal, log } = madeTasting(plan)
    const { batches, pieces, dealt } = session
    present('ta-1')
    log(
      { kind: 'weighed', ingredientId: 'water', grams: 265.6 },
      { about: { kind: 'batch', id: nth(batches, 0).id } },
    )
    seal('ta-1', serving(nth(order, 0)))
    const text = JSON.stringify(blindView(records, 'session-a', 'ta-1'))
    const secrets = [
      ...plan.levels.flatMap((level) => [level.id, `"${level.label}"`, String(level.value)]),
      ...['66.4', '61.5', '265.6', 'hydration', plan.question],
      ...[...batches, ...pieces, ...dealt.flights, ...dealt.loads, ...dealt.servings].map(
        (one) => `"${one.id}"`,
      ),
      ...dealt.letters.map((one) => `"${one.letter}"`),
    ]
    // Two-digit labels such as 57 may stand inside a code: taken with their quotes above; values with a point never can.
    const told = secrets.filter((secret) => !/^\d\d$/.test(secret) && text.includes(secret))
    expect(told).toEqual([])
    expect(Object.keys(JSON.parse(text))).toEqual([
      'sessionNumber',
      'servings',
      'nextCode',
      'warmUpCode',
      'warmUpAtSeat',
      'sets',
      'tellApart',
      'questions',
      'rest',
      'ranking',
      'guess',
      'complete',
    ])
  })

  it('follows the order of the taster and leads back by code', () => {
    const { records, present, seal } = madeTasting()
    present('ta-1')
    seal('ta-1', serving(nth(order, 0)))
    const view = blindView(records, 'session-a', 'ta-1')
    expect(view.servings.map((one) => one.code)).toEqual(order.map(codeOf))
    expect(view.servings.map((one) => one.done)).toEqual([true, ...new Array(7).fill(false)])
    expect(view.nextCode).toBe(codeOf(nth(order, 1)))
    expect(servingByCode(session, view.nextCode ?? '')?.id).toBe(order[1])
    expect(servingByCode(session, '099')).toBeNull()
    const warmUp = session.dealt.servings.find((one) => one.flightId === null)
    expect(view.warmUpCode).toBe(warmUp?.code)
    expect(view.servings.map((one) => one.code)).not.toContain(warmUp?.code)
  })
})
