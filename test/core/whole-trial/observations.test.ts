import { describe, expect, it } from 'vitest'
import { addedSessions, earlyLooks, peeks } from '@/core/seal/looks.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { nextSession } from '@/core/whole-trial/next-session.ts'
import { observations } from '@/core/whole-trial/observations.ts'
import { sessionsDone, stageOf } from '@/core/whole-trial/stage.ts'
import { madePlan } from '../made-plan.ts'
import { madeSession, nth, pieceAt } from '../session/made-session.ts'
import { answers, madeTasting } from '../tasting/made-tasting.ts'

const session = madeSession()
const order = nth(session.dealt.tasterOrders, 0).servingIds
const serving = (id: string) => ({ kind: 'serving', id }) as const
const pieceOf = (servingId: string) =>
  session.pieces.find(
    (piece) => piece.id === session.dealt.servings.find((one) => one.id === servingId)?.pieceId,
  )
function observed(records: Parameters<typeof observations>[0], unsealed = true) {
  const answer = observations(records, { unsealed })
  if (!answer.ok) throw new Error(answer.reason)
  return answer
}

describe('observations', () => {
  it('refuses while sealed, unless the look is known', () => {
    const { records, seal, log } = madeTasting()
    seal('ta-1', serving(nth(order, 0)))
    expect(sealed(records)).toBe(true)
    expect(observations(records, { unsealed: false })).toEqual({
      ok: false,
      reason: 'still-sealed',
    })
    expect(observed(records).rows).toHaveLength(2)
    log({ kind: 'unsealed' })
    expect(observed(records, false).rows).toHaveLength(2)
  })

  it('gives each answer its dough, piece, level, position and minutes from the oven', () => {
    const { records, seal, log } = madeTasting()
    const id = nth(order, 5)
    const piece = pieceOf(id)
    const about = { kind: 'piece', id: piece?.id ?? '' } as const
    log({ kind: 'bake-in' }, { about, at: 4_000_000 })
    log({ kind: 'bake-out' }, { about, at: 4_700_000 })
    // Ballot begun at 5,000,000 ms, 300 s = 5 minutes after the oven; sixth serving, second of its flight.
    seal('ta-2', serving(id), { startedAt: 5_000_000, answers: answers(8, null, 'no salt sense') })
    const { rows, gaps } = observed(records)
    expect(rows).toEqual([
      {
        sessionId: 'session-a',
        flightId: piece?.flightId,
        batchId: piece?.batchId,
        letter: session.dealt.letters.find((one) => one.levelId === piece?.levelId)?.letter,
        pieceId: piece?.id,
        levelId: piece?.levelId,
        tasterId: 'ta-2',
        position: 6,
        positionInFlight: 2,
        minutesSinceOven: 5,
        responseId: 'liking',
        value: 8,
      },
    ])
    expect(gaps.find((gap) => gap.position === 6)).toMatchObject({
      responseId: 'salty',
      because: 'no-answer',
      why: 'no salt sense',
    })
  })

  it('says of every empty cell why: lost, left, declined or not answered', () => {
    const { records, seal, present, log } = madeTasting()
    const lost = pieceOf(nth(order, 7))
    log(
      { kind: 'failure', what: 'stuck', note: 'to the peel' },
      { about: { kind: 'piece', id: lost?.id ?? '' } },
    )
    log({ kind: 'failure', what: 'not-served' }, { about: { kind: 'piece', id: lost?.id ?? '' } })
    present('ta-1')
    for (const id of order.slice(0, 6)) seal('ta-1', serving(id))
    log({ kind: 'left' }, { about: { kind: 'taster', id: 'ta-2' } })
    const { rows, gaps } = observed(records)
    expect(rows).toHaveLength(12)
    const count = (tasterId: string | null, because: string) =>
      gaps.filter((gap) => gap.tasterId === tasterId && gap.because === because).length
    // ta-1: one serving unanswered, one stuck, two questions each; ta-2 left: seven servings, one stuck; ta-3 never came.
    expect([count('ta-1', 'no-answer'), count('ta-1', 'stuck')]).toEqual([2, 2])
    expect([count('ta-2', 'left'), count('ta-2', 'stuck')]).toEqual([14, 2])
    expect(gaps.some((gap) => gap.tasterId === 'ta-3')).toBe(false)
    // The baker's bake loss of the stuck piece is a gap as well.
    expect(gaps.filter((gap) => gap.responseId === 'loss')).toMatchObject([
      { pieceId: lost?.id, because: 'stuck', why: 'to the peel' },
    ])
  })

  it("takes the baker's scores by dough and never pools topped with plain", () => {
    const { records, log } = madeTasting()
    const low = pieceAt(session, 'lv-low')
    const top = pieceAt(session, 'lv-top')
    log(
      { kind: 'measured', responseId: 'sticky', value: 6 },
      { about: { kind: 'batch', id: low.batchId } },
    )
    const weigh = (id: string, topped: boolean) => {
      const about = { kind: 'piece', id } as const
      log({ kind: 'mass', when: 'in', grams: 200, topped }, { about })
      log({ kind: 'mass', when: 'out', grams: 170, topped }, { about })
    }
    weigh(low.id, true)
    expect(observed(records).rows.map((row) => [row.responseId, row.value, row.pieceId])).toEqual([
      ['sticky', 6, null],
      ['loss', 15, low.id],
    ])
    weigh(top.id, false)
    const losses = observed(records).rows.filter((row) => row.responseId === 'loss')
    expect(losses.map((row) => row.pieceId)).toEqual([top.id])
  })
})

describe('stageOf', () => {
  it('goes from planning to answered', () => {
    const { records, seal, present, log } = madeTasting(madePlan({ plannedSessions: 1 }), [])
    expect(stageOf(records)).toBe('planning')
    records.sessions.push(madeSession(madePlan({ plannedSessions: 1 })))
    expect(stageOf(records)).toBe('working')
    present('ta-1')
    seal('ta-1', serving(nth(order, 0)))
    expect(stageOf(records)).toBe('tasting')
    for (const id of order.slice(1)) seal('ta-1', serving(id))
    // Two more were planned: until they came or were marked as not tasting, ballots are still awaited.
    expect(stageOf(records)).toBe('tasting')
    for (const id of ['ta-2', 'ta-3']) log({ kind: 'declined' }, { about: { kind: 'taster', id } })
    expect(stageOf(records)).toBe('sealed')
    expect(sessionsDone(records)).toBe(0)
    log({ kind: 'unsealed' })
    expect(stageOf(records)).toBe('answered')
    expect(sessionsDone(records)).toBe(1)
  })

  it('stands between planned sessions until the next is begun', () => {
    const { records, log } = madeTasting()
    expect(nextSession(records)).toBe(null)
    log({ kind: 'unsealed' })
    expect(stageOf(records)).toBe('between')
    // Two are planned, the first is tasted and open: the second waits.
    expect(nextSession(records)).toBe(2)
    records.sessions.push(madeSession(madePlan(), [session]))
    expect(stageOf(records)).toBe('working')
    log({ kind: 'unsealed' }, { sessionId: 'session-2' })
    expect(stageOf(records)).toBe('answered')
  })

  it('needs no tasting where tasters are asked nothing', () => {
    const plan = madePlan({
      plannedSessions: 1,
      responses: madePlan().responses.filter((response) => response.by === 'baker'),
    })
    const { records, log } = madeTasting(plan, [madeSession(plan)])
    const counted = session.pieces.filter((piece) => piece.role === 'counted')
    for (const { id } of counted.slice(1))
      log({ kind: 'bake-out' }, { about: { kind: 'piece', id } })
    expect(stageOf(records)).toBe('working')
    log({ kind: 'failure', what: 'burnt' }, { about: { kind: 'piece', id: nth(counted, 0).id } })
    expect(stageOf(records)).toBe('answered')
  })
})

describe('a failed piece', () => {
  it.each(['stuck', 'torn', 'burnt', 'gummy', 'rescued'] as const)(
    'that is %s leaves a gap with that reason for each of its servings, and no value stands in for it',
    (what) => {
      const { records, log } = madeTasting()
      const id = nth(order, 0)
      log({ kind: 'failure', what }, { about: { kind: 'piece', id: pieceOf(id)?.id ?? '' } })
      log({ kind: 'unsealed' })
      const { rows, gaps } = observed(records)
      expect(rows.filter((row) => row.pieceId === pieceOf(id)?.id)).toEqual([])
      const ofPiece = gaps.filter((gap) => gap.pieceId === pieceOf(id)?.id)
      expect(ofPiece.length).toBeGreaterThan(0)
      expect(new Set(ofPiece.map(({ because }) => because))).toEqual(new Set([what]))
    },
  )
})

describe('looks', () => {
  it('calls a look early until the last planned session is unsealed, and keeps peeks', () => {
    const { records, log } = madeTasting()
    log({ kind: 'unsealed' }, { at: 1000 })
    log({ kind: 'findings-looked' }, { at: 2000 })
    log({ kind: 'peeked', reason: 'plating' }, { at: 2500 })
    expect(earlyLooks(records).map((look) => look.at)).toEqual([2000])
    records.sessions.push(madeSession(madePlan(), [session]))
    log({ kind: 'unsealed' }, { at: 3000, sessionId: 'session-2' })
    log({ kind: 'findings-looked' }, { at: 4000 })
    expect(earlyLooks(records).map((look) => look.at)).toEqual([2000])
    expect(peeks(records)).toEqual([{ at: 2500, sessionId: 'session-a', reason: 'plating' }])
    expect(addedSessions(records)).toEqual([])
    const third = madeSession(madePlan(), records.sessions)
    expect(addedSessions({ sessions: [...records.sessions, third] })).toEqual([third])
  })
})
