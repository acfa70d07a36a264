import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { codesOfSession, dealSession } from '@/core/session/deal-session.ts'
import { dealtBalance } from '@/core/session/dealt-balance.ts'
import { ordersByLevel } from '@/core/session/earlier-orders.ts'
import { previewSessions } from '@/core/session/preview-sessions.ts'
import { type Session, sessionShape } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { countedIds, madePlan } from '../made-plan.ts'

function dealt(plan: Plan, number = 1, earlier: Session[] = [], trialSeed = 42): Session {
  const made = dealSession({
    plan,
    trialSeed,
    number,
    earlier,
    at: 2_000,
    zone: 'Europe/Zurich',
    newId: countedIds(`s${number}`),
  })
  if (!made.ok) throw new Error(made.reason)
  return made.session
}

const levelIds = madePlan().levels.map((level) => level.id)

describe('dealSession', () => {
  it('deals a record of the session shape, the same from the same seed', () => {
    const session = dealt(madePlan())
    expect(sessionShape.parse(session)).toEqual(session)
    expect(dealt(madePlan())).toEqual(session)
    expect(dealt(madePlan(), 1, [], 43).dealt.servings).not.toEqual(session.dealt.servings)
  })

  it('makes one batch a level, two pieces of each in two flights, and a warm-up of the control', () => {
    // Four levels × two flights = 8 counted pieces, one warm-up: 9 pieces, 9 servings, 9 loads of one place.
    const session = dealt(madePlan())
    expect(session.batches.map((batch) => batch.levelId)).toEqual(levelIds)
    expect(session.pieces).toHaveLength(9)
    const warmUp = session.pieces.filter((piece) => piece.role === 'warm-up')
    expect(warmUp.map((piece) => piece.levelId)).toEqual(['lv-mid'])
    expect(session.dealt.servings).toHaveLength(9)
    expect(session.dealt.loads).toHaveLength(9)
    expect(session.dealt.loads[0]?.pieceIds).toEqual(warmUp.map((piece) => piece.id))
    for (const flight of session.dealt.flights) expect(flight.pieceIds).toHaveLength(4)
  })

  it('gives each piece the batch of its level', () => {
    const session = dealt(madePlan({ sparePieces: 1 }))
    const batches = new Map(session.batches.map((batch) => [batch.id, batch.levelId]))
    expect(session.pieces).toHaveLength(13)
    for (const piece of session.pieces) expect(batches.get(piece.batchId)).toBe(piece.levelId)
  })

  it('serves as baked to everybody in baking order, without the warm-up', () => {
    const session = dealt(madePlan())
    const bakingOrder = session.dealt.flights.flatMap((flight) => flight.pieceIds)
    const pieceOf = new Map(session.dealt.servings.map((one) => [one.id, one.pieceId]))
    for (const order of session.dealt.tasterOrders)
      expect(order.servingIds.map((id) => pieceOf.get(id))).toEqual(bakingOrder)
  })

  it('gives each taster of a rested trial a row of their own, flight after flight', () => {
    const session = dealt(madePlan({ serving: 'rested', flights: 2 }))
    const counted = session.dealt.servings.filter((serving) => serving.flightId !== null)
    const flightOf = new Map(counted.map((serving) => [serving.id, serving.flightId]))
    for (const { servingIds } of session.dealt.tasterOrders) {
      expect(new Set(servingIds)).toEqual(new Set(counted.map((serving) => serving.id)))
      expect(new Set(servingIds.slice(0, 4).map((id) => flightOf.get(id))).size).toBe(1)
    }
    const eight = Array.from({ length: 8 }, (_, taster) => ({
      tasterId: `t${taster}`,
      knows: false,
    }))
    const balanced = dealt(madePlan({ serving: 'rested', flights: 1, tasters: eight }))
    // Eight tasters and four lines: the four rows twice, so every level twice at every position.
    const { mouth } = dealtBalance([balanced], levelIds)
    expect([mouth.leastAt, mouth.mostAt, mouth.even]).toEqual([2, 2, true])
  })

  it('reverses the dough order in the next session and draws it anew in the third', () => {
    const one = dealt(madePlan())
    const two = dealt(madePlan(), 2, [one])
    const three = dealt(madePlan(), 3, [one, two])
    const dough = (session: Session) => ordersByLevel(session, levelIds).dough
    expect(dough(two)).toEqual(dough(one).toReversed())
    expect([one, two, three].map((session) => session.dealt.reversed)).toEqual([false, true, false])
  })

  it('never repeats a code in a trial, and says when they run out', () => {
    const one = dealt(madePlan())
    const two = dealt(madePlan(), 2, [one])
    const codes = [one, two].flatMap(codesOfSession)
    expect(new Set(codes).size).toBe(18)
    // 4 levels × 130 flights = 520 servings, more than 495 codes.
    const many = dealSession({
      plan: madePlan({ flights: 130, warmUpPiece: false }),
      trialSeed: 1,
      number: 1,
      earlier: [],
      at: 0,
      zone: 'UTC',
      newId: countedIds(),
    })
    expect(many).toEqual({ ok: false, reason: 'codes-run-out', asked: 520, left: 495 })
  })

  it('divides one dough for all levels when the factor acts late', () => {
    const late = madePlan({
      doughs: 'one',
      factor: {
        name: 'proof',
        unitOfMeasure: 'min',
        acts: { on: 'proof-time', stepId: 'rest' },
        splitsAt: 'proof',
        held: 'piece',
      },
    })
    const session = dealt(late)
    expect(session.batches).toHaveLength(1)
    expect(session.batches[0]).toMatchObject({ levelId: null, letter: 'E' })
    expect(session.dealt.letters.map((one) => one.letter).toSorted()).toEqual(['A', 'B', 'C', 'D'])
    expect(session.dealt.doughOrder).toEqual([session.batches[0]?.id])
    expect(new Set(session.pieces.map((piece) => piece.levelId))).toEqual(new Set(levelIds))
    expect(sessionShape.safeParse(session).success).toBe(true)
  })

  it('deals tell-apart sets whose answer is the odd sample, all six triangles equally often', () => {
    const tasters = Array.from({ length: 12 }, (_, taster) => ({
      tasterId: `t${taster}`,
      knows: false,
    }))
    const plan = madePlan({
      tasters,
      tellApart: { test: 'triangle', levelIds: ['lv-top', 'lv-low'] },
    })
    const { sets } = dealt(plan).dealt
    expect(sets).toHaveLength(12)
    const patterns = new Map<string, number>()
    for (const set of sets) {
      const odd = set.samples.find((sample) => sample.code === set.answerCode)?.levelId
      expect(set.samples.filter((sample) => sample.levelId === odd)).toHaveLength(1)
      const pattern = set.samples
        .map((sample) => (sample.levelId === 'lv-low' ? 'L' : 'T'))
        .join('')
      patterns.set(pattern, (patterns.get(pattern) ?? 0) + 1)
    }
    expect([...patterns.values()]).toEqual([2, 2, 2, 2, 2, 2])
    const paired = dealt(
      madePlan({ tasters, tellApart: { test: 'paired', levelIds: ['lv-top', 'lv-low'] } }),
    )
    for (const set of paired.dealt.sets)
      expect(set.samples.find((sample) => sample.code === set.answerCode)?.levelId).toBe('lv-top')
  })

  it('deals each oven temperature loads of its own', () => {
    const hot = madePlan({
      ...{ doughs: 'one', placesPerLoad: 4, flights: 2, serving: 'rested', warmUpPiece: false },
      factor: {
        ...{ name: 'oven', unitOfMeasure: '°C', splitsAt: 'oven', held: 'piece' },
        acts: { on: 'bake-temperature', stepId: 'bake' },
      },
    })
    const { dealt: orders, pieces } = dealt(hot)
    const levelOf = new Map(pieces.map(({ id, levelId }) => [id, levelId]))
    const loads = orders.loads.map((load) => load.pieceIds.map((id) => levelOf.get(id)))
    expect(loads.map((load) => load.length)).toEqual([1, 1, 1, 1, 1, 1, 1, 1])
    // Each flight in its own order, as it was drawn.
    expect(loads.flat()).toEqual(
      orders.flights.flatMap(({ pieceIds }) => pieceIds.map((id) => levelOf.get(id))),
    )
  })

  it('refuses a trial of one level', () => {
    const plan = madePlan()
    const single = madePlan({ levels: plan.levels.slice(0, 1) })
    expect(
      dealSession({
        plan: single,
        trialSeed: 1,
        number: 1,
        earlier: [],
        at: 0,
        zone: 'UTC',
        newId: countedIds(),
      }),
    ).toEqual({ ok: false, reason: 'needs-two-levels', levels: 1 })
  })

  it('holds its shape and rules for any plan in reach', () => {
    fc.assert(
      fc.property(
        fc.record({
          lines: fc.integer({ min: 2, max: 9 }),
          flights: fc.integer({ min: 1, max: 4 }),
          places: fc.integer({ min: 1, max: 7 }),
          asBaked: fc.boolean(),
          one: fc.boolean(),
          seed: fc.nat(),
        }),
        ({ lines, flights, places, asBaked, one, seed }) => {
          const levels = Array.from({ length: lines }, (_, index) => ({
            id: `lv-${index}`,
            value: 55 + index * 3.3,
            label: `${index}`,
            control: false,
          }))
          const plan = madePlan({
            levels,
            flights,
            placesPerLoad: places,
            serving: asBaked ? 'as-baked' : 'rested',
            doughs: one ? 'one' : 'apart',
            factor: { ...madePlan().factor, splitsAt: one ? 'oven' : 'mix' },
          })
          const session = dealt(plan, 1, [], seed)
          expect(sessionShape.safeParse(session).success).toBe(true)
          expect(session.dealt.loads.every((load) => load.pieceIds.length <= places)).toBe(true)
          const loaded = session.dealt.loads.flatMap((load) => load.pieceIds)
          expect(new Set(loaded).size).toBe(lines * flights + 1)
        },
      ),
      { numRuns: 60 },
    )
  })
})

describe('previewSessions and dealtBalance', () => {
  it('deals all planned sessions ahead, keeping those begun', () => {
    const plan = madePlan({ plannedSessions: 3 })
    const begun = [dealt(plan)]
    const preview = previewSessions(plan, 42, begun)
    expect(preview.ok && preview.sessions.map((session) => session.number)).toEqual([1, 2, 3])
    expect(preview.ok && preview.sessions[0]).toBe(begun[0])
    expect(preview.ok && preview.sessions[1]?.dealt.seed).toBe(dealt(plan, 2, begun).dealt.seed)
  })

  it('is wholly even in oven and mouth over two sessions of two flights of four', () => {
    const preview = previewSessions(madePlan(), 7)
    if (!preview.ok) throw new Error(preview.reason)
    const balance = dealtBalance(preview.sessions, levelIds)
    // Four flights of four lines are the whole design: each level once at each position, once after each other.
    expect(balance.bake.even).toBe(true)
    expect(balance.mouth.even).toBe(true)
    expect(balance.dough.meanPositions).toEqual([2.5, 2.5, 2.5, 2.5])
    expect(balance.loads.even).toBe(true)
    expect(balance.places).toMatchObject({ least: 4, most: 4, even: true })
  })

  it('counts what one flight in loads of two leaves uneven', () => {
    const preview = previewSessions(
      madePlan({ flights: 1, plannedSessions: 1, placesPerLoad: 2 }),
      7,
    )
    if (!preview.ok) throw new Error(preview.reason)
    const { loads, places } = dealtBalance(preview.sessions, levelIds)
    expect([loads.least, loads.most, loads.even]).toEqual([0, 1, false])
    expect(loads.times.map((row) => row.reduce((sum, count) => sum + count, 0))).toEqual([
      1, 1, 1, 1,
    ])
    expect(places.even).toBe(false)
  })
})
