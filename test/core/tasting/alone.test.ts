import { describe, expect, test } from 'vitest'
import { tableFindings } from '@/core/findings/at-table/table-findings.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { lettersLeft, withTheLast } from '@/core/tasting/plates.ts'
import { toTurn, turnedOf, turnsAll } from '@/core/tasting/to-turn.ts'
import { turnedSession } from '@/core/tasting/turned-session.ts'
import { cupSheet } from '@/core/weighing/cup-sheet.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { observations } from '@/core/whole-trial/observations.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { madePlan } from '../made-plan.ts'
import { nth } from '../session/made-session.ts'
import { aloneTrial } from './alone-trial.ts'

const stamp = (count: number) => ({
  ...{ id: `alone-${count}`, trialId: 'trial-1', sessionId: nth(aloneTrial().sessions, 0).id },
  ...{ device: 'device-1', count, at: 9_000_000 + count, zone: 'Europe/Rome' },
})

/** Everything scored by plate: each plate its number, so that the record tells which plate was which. */
function scored(whole: WholeTrial): WholeTrial {
  const session = nth(whole.sessions, 0)
  const order = nth(session.dealt.tasterOrders, 0).servingIds
  const ballots = order.map((id, at): WholeTrial['ballots'][number] => {
    const { zone: _zone, ...own } = stamp(100 + at)
    return {
      ...own,
      tasterId: 'club-1',
      about: { kind: 'serving', id },
      answers: [{ responseId: 'liking', value: at + 1 }],
    }
  })
  return { ...whole, ballots }
}

describe('plates shuffled by whoever tastes', () => {
  test('two goes are two rounds, each plated anew; the taster’s page knows plates and no more', () => {
    const whole = scored(aloneTrial())
    const { rounds } = toTurn(whole, nth(whole.sessions, 0).id) ?? { rounds: [] }
    expect(rounds.map(({ letters }) => letters)).toEqual([
      ['A', 'B', 'C'],
      ['A', 'B', 'C'],
    ])
    const view = blindView(whole, nth(whole.sessions, 0).id, 'club-1')
    expect(view.servings.map(({ plate }) => plate)).toEqual([1, 2, 3, 1, 2, 3])
    expect(view.guess).toMatchObject({ done: false, most: { factorKind: 'hydration' } })
  })

  test('the last plate of a round fills itself in, and a letter is left for one plate alone', () => {
    const whole = scored(aloneTrial())
    const { rounds } = toTurn(whole, nth(whole.sessions, 0).id) ?? { rounds: [] }
    const first = nth(rounds, 0)
    const [one, two, three] = first.plates.map(({ key }) => key)
    if (!one || !two || !three) throw new Error('three plates')
    expect(lettersLeft(first, { [one]: 'C' })).toEqual(['A', 'B'])
    expect(withTheLast([first], { [one]: 'C', [two]: 'A' })).toEqual({
      [one]: 'C',
      [two]: 'A',
      [three]: 'B',
    })
    expect(withTheLast([first], { [one]: 'C' })).toEqual({ [one]: 'C' })
  })

  test('each score goes to the dough whose letter lay under its plate, and the second go repeats the first', () => {
    const whole = scored(aloneTrial())
    const session = nth(whole.sessions, 0)
    const wanted = toTurn(whole, session.id)
    if (!wanted) throw new Error('to turn')
    // First go: plates 1 to 3 were C, A, B; second go: B, C, A. Plate by plate the scores are 1 to 6.
    const letters = Object.fromEntries(
      wanted.rounds
        .flatMap(({ plates }) => plates.map(({ key }) => key))
        .map((key, at) => [key, nth(['C', 'A', 'B', 'B', 'C', 'A'], at)]),
    )
    const turned = turnedOf(session, wanted, letters, {})
    if (!turned) throw new Error('all turned')
    expect(turnsAll(session, wanted, turned)).toBe(true)
    const after: WholeTrial = {
      ...whole,
      sessions: [turnedSession(session, turned)],
      events: [
        {
          ...stamp(900),
          kind: 'unsealed',
          about: { kind: 'session', id: session.id },
          turned,
        },
      ],
    }
    const seen = observations(after, { unsealed: false })
    if (!seen.ok) throw new Error(seen.reason)
    expect(
      Object.fromEntries(
        seen.rows
          .filter(({ responseId }) => responseId === 'liking')
          .map(({ letter, value }) => [letter, value]),
      ),
    ).toEqual({ C: 1, A: 2, B: 3 })
    const told = tableFindings(after, { unsealed: false })
    // A 2 and 6, B 3 and 4, C 1 and 5: sizes 4, 1, 4, mean 3; √((16 + 1 + 16) / 6) = 2.345.
    expect(told.ok && told.repeats).toEqual([
      { tasterId: 'club-1', pairs: 3, sd: expect.closeTo(2.345, 3), meanApart: 3 },
    ])
    expect(toTurn(after, session.id)).toBeNull()
  })

  test('a letter said twice, or a plate left out, is not all that was shuffled', () => {
    const whole = scored(aloneTrial())
    const session = nth(whole.sessions, 0)
    const wanted = toTurn(whole, session.id)
    if (!wanted) throw new Error('to turn')
    const keys = wanted.rounds.flatMap(({ plates }) => plates.map(({ key }) => key))
    const twice = Object.fromEntries(keys.map((key) => [key, 'A']))
    expect(turnedOf(session, wanted, twice, {})).toBeNull()
    const pieceOf = new Map(session.dealt.servings.map(({ id, pieceId }) => [id, pieceId]))
    const plates = keys.map((servingId) => ({ servingId, pieceId: pieceOf.get(servingId) ?? '' }))
    expect(turnsAll(session, wanted, { plates })).toBe(true)
    expect(turnsAll(session, wanted, { plates: plates.slice(1) })).toBe(false)
    const same = plates.map((each) => ({ ...each, pieceId: nth(plates, 0).pieceId }))
    expect(turnsAll(session, wanted, { plates: same })).toBe(false)
  })
})

describe('a triangle against oneself', () => {
  test('the odd one is known once its three plates are turned', () => {
    const whole = aloneTrial()
    const session = nth(whole.sessions, 0)
    const sample = (code: string, levelId: string) => ({ code, levelId })
    const set = {
      ...{ id: 'set-1', tasterId: 'club-1', answerCode: '777' },
      samples: [sample('555', 'level-1'), sample('666', 'level-1'), sample('777', 'level-3')],
    }
    const turned = turnedSession(
      { ...session, dealt: { ...session.dealt, sets: [set] } },
      {
        samples: [
          { setId: 'set-1', code: '555', levelId: 'level-3' },
          { setId: 'set-1', code: '666', levelId: 'level-1' },
          { setId: 'set-1', code: '777', levelId: 'level-1' },
        ],
      },
    )
    expect(nth(turned.dealt.sets, 0).answerCode).toBe('555')
  })
})

describe('cups', () => {
  test('one line differs: a round common share for all, the rest in cups, together what the sheet asks', () => {
    const plan = aloneTrial().plans[0] ?? madePlan()
    const sheet = weighSheet(plan, [])
    const cups = cupSheet(sheet)
    if (!cups.ok) throw new Error(cups.reason)
    const water = cups.row.cells.map((cell) => cell?.grams ?? 0)
    for (const [at, cup] of cups.cups.entries()) {
      expect(cup.grams).toBeGreaterThan(0)
      expect(cup.grams + cups.commonGrams).toBeCloseTo(nth(water, at), 1)
    }
    for (const { cells } of cups.same.rows)
      expect(new Set(cells.map((cell) => cell?.grams.toFixed(6))).size).toBe(1)
  })

  test('where the dough is held more lines differ, and there are no cups', () => {
    const { factor } = madePlan()
    const plan = madePlan({
      factor: { ...factor, held: 'dough' },
      formula: {
        ...madePlan().formula,
        batchSize: { by: 'pieces', pieces: 4, pieceGrams: 250, lossPercent: 2 },
      },
    })
    expect(cupSheet(weighSheet(plan, []))).toEqual({ ok: false, reason: 'more-differs' })
  })

  test('letters get their levels from the tickets, doughs, pieces and letters alike', () => {
    const whole = scored(aloneTrial({ cups: true }))
    const session = nth(whole.sessions, 0)
    const tickets = session.dealt.tickets ?? []
    expect(new Set(tickets.map(({ ticket }) => ticket)).size).toBe(3)
    // Sealed from the deal on: what the record says of levels is not true yet.
    expect(sealed({ ...whole, ballots: [], events: [] })).toBe(true)
    const wanted = toTurn(whole, session.id)
    if (!wanted) throw new Error('to turn')
    expect(wanted.rounds).toEqual([])
    // Dough A got the ticket of the third level, B of the first, C of the second.
    const levelOf: Record<string, string> = { A: 'level-3', B: 'level-1', C: 'level-2' }
    const ticketOf = Object.fromEntries(
      wanted.doughs.map(({ batchId, letter }) => [
        batchId,
        tickets.find(({ levelId }) => levelId === levelOf[letter])?.ticket ?? '',
      ]),
    )
    const turned = turnedOf(session, wanted, {}, ticketOf)
    if (!turned) throw new Error('all turned')
    expect(turnsAll(session, wanted, turned)).toBe(true)
    const after = turnedSession(session, turned)
    for (const { id, letter, levelId } of after.batches) {
      expect(levelId).toBe(levelOf[letter])
      for (const piece of after.pieces.filter(({ batchId }) => batchId === id))
        expect(piece.levelId).toBe(levelId)
    }
    for (const { letter, levelId } of after.dealt.letters) expect(levelId).toBe(levelOf[letter])
  })
})
