import { describe, expect, it } from 'vitest'
import { agenda } from '@/core/session/agenda.ts'
import { doughAgain } from '@/core/session/dough-again.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { countedIds, madePlan } from '../made-plan.ts'
import { madeLog } from './made-events.ts'
import { madeSession } from './made-session.ts'

const plan = madePlan()
const session = madeSession(plan)
const [failed = ''] = session.dealt.doughOrder
const old = session.batches.find(({ id }) => id === failed)
const newIds = () => countedIds('again')

const again = (log = madeLog(), tasted = false) =>
  doughAgain(session, failed, { log: effectiveEvents(log.events), tasted, newId: newIds() })

describe('a dough made again', () => {
  it('keeps the old dough, and gives its level a new one under the next letter, worked last', () => {
    const made = again()
    if (!made.ok) throw new Error(made.reason)
    const { batches, dealt, pieces } = made.session
    // Four levels are A to D.
    expect(made.letter).toBe('E')
    expect(batches.filter(({ levelId }) => levelId === old?.levelId)).toEqual([
      old,
      { id: made.batchId, letter: 'E', levelId: old?.levelId },
    ])
    expect(dealt.doughOrder).toEqual([...session.dealt.doughOrder.slice(1), made.batchId])
    expect(dealt.letters).toContainEqual({ levelId: old?.levelId, letter: 'E' })
    expect(
      pieces
        .filter(({ batchId }) => batchId === failed)
        .map(({ role, flightId }) => [role, flightId]),
    ).toEqual(session.pieces.filter(({ batchId }) => batchId === failed).map(() => ['spare', null]))
  })

  it('serves the new pieces under the codes and in the flights of the old ones, and bakes them after all others', () => {
    const made = again()
    if (!made.ok) throw new Error(made.reason)
    const { dealt, pieces } = made.session
    const levelOf = (id: string) => pieces.find((piece) => piece.id === id)?.levelId
    const before = (id: string) => session.pieces.find((piece) => piece.id === id)?.levelId
    expect(dealt.servings.map(({ code, pieceId }) => [code, levelOf(pieceId)])).toEqual(
      session.dealt.servings.map(({ code, pieceId }) => [code, before(pieceId)]),
    )
    for (const { pieceIds } of dealt.flights) {
      expect(pieces.find(({ id }) => id === pieceIds.at(-1))?.batchId).toBe(made.batchId)
      expect(new Set(pieceIds.map(levelOf)).size).toBe(plan.levels.length)
    }
    const baked = dealt.loads.flatMap(({ pieceIds }) => pieceIds)
    const newPieces = pieces.filter(
      ({ batchId, role }) => batchId === made.batchId && role !== 'spare',
    )
    expect(baked.slice(-newPieces.length).toSorted()).toEqual(
      newPieces.map(({ id }) => id).toSorted(),
    )
    expect(new Set(baked).size).toBe(baked.length)
  })

  it('asks for the new dough and no longer for the old one', () => {
    const made = again()
    if (!made.ok) throw new Error(made.reason)
    const ids = agenda(made.session, plan, [], 0).map(({ batchId }) => batchId)
    expect(ids).toContain(made.batchId)
    expect(ids).not.toContain(failed)
  })

  it('is refused once a piece of it was baked, once people tasted, and for one that was made again', () => {
    const log = madeLog()
    const piece = session.pieces.find(({ batchId }) => batchId === failed)?.id ?? ''
    log.log({ kind: 'bake-in' }, { about: { kind: 'piece', id: piece } })
    expect(again(log)).toEqual({ ok: false, reason: 'was-baked' })
    expect(again(madeLog(), true)).toEqual({ ok: false, reason: 'was-served' })
    const made = again()
    if (!made.ok) throw new Error(made.reason)
    expect(doughAgain(made.session, failed, { log: [], tasted: false, newId: newIds() })).toEqual({
      ok: false,
      reason: 'not-in-work',
    })
  })
})
