import { describe, expect, it } from 'vitest'
import { plannedTimes } from '@/core/fairness/planned-times.ts'
import { dealSession } from '@/core/session/deal-session.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { countedIds, madePlan, madeStep } from '../made-plan.ts'

function dealt(plan: Plan): Session {
  const newId = countedIds('t')
  const session = dealSession({
    ...{ plan, trialSeed: 5, number: 1, earlier: [], at: 0, zone: plan.zone, newId },
  })
  if (!session.ok) throw new Error(session.reason)
  return session.session
}

/** One piece a load, baked in dough order, one flight after the other. */
function inDoughOrder(session: Session): Session {
  const ofDoughs = session.dealt.doughOrder.map((batchId) =>
    session.pieces.filter((piece) => piece.batchId === batchId).map(({ id }) => id),
  )
  const order = session.dealt.flights.flatMap((_, flight) =>
    ofDoughs.flatMap((ids) => ids[flight] ?? []),
  )
  const loads = order.map((id, at) => ({ id: `load-${at}`, number: at + 1, pieceIds: [id] }))
  return { ...session, dealt: { ...session.dealt, loads } }
}

const twoLevels = { levels: madePlan().levels.slice(0, 2), warmUpPiece: false }

describe('plannedTimes', () => {
  // Hands 480 s a dough (the mix). To the oven: 480 + 1800 + 2 × 1320 + 60 = 4980 s, so the doughs are ready at 4980 and 5460 s.
  // One place, 260 s a bake, then 15 s for the pull and 60 s until the oven is as hot: 335 s. First flight in dough order: no
  // wait. The second could be in at 5795 and 6130, 815 and 670 s late: 743 s in the middle, the same for both. A quarter of 5 %
  // of their age, 72 s, is what the doughs of a flight may differ by.
  it('lets a piece wait for its dough and for the oven', () => {
    const plan = madePlan({ ...twoLevels, flights: 2 })
    const times = plannedTimes(plan, inDoughOrder(dealt(plan)))
    const [one = -1, two = -1, three = -1, four = -1] = times.map((time) => time.waitedSeconds)
    expect(Math.max(one, two)).toBeLessThanOrEqual(72)
    expect([Math.min(one, two) >= 0, Math.abs(three - four) <= 72]).toEqual([true, true])
    expect(Math.min(three, four)).toBeGreaterThanOrEqual(743)
    expect(Math.max(three, four)).toBeLessThanOrEqual(743 + 72)
    expect(times.map(({ methodSeconds }) => methodSeconds)).toEqual([4980, 4980, 4980, 4980])
    expect(times.every(({ ageSeconds }) => ageSeconds === 0)).toBe(true)
  })

  // Three loaves, 10 min of hands a dough, 120 min to the oven, 40 min a bake, one place: ready at 120, 130, 140 min if all
  // were begun at once. Baked in dough order: in at 120, 160, 200; begun at 0, 40, 80 nobody waits.
  // Baked the other way round: the third is in at 140, the second 41:15 later (40 min of bake, 15 s for the pull, 60 s until
  // the oven is as hot), the first as long after that; the third cannot begin before 20, so the first two begin at 0 and 10
  // and wait 102:30 and 51:15 min while the oven is busy.
  it('begins each dough no sooner than its turn at the oven asks', () => {
    const steps = [
      madeStep('mix', 'mix', { handsSeconds: 600, waitSeconds: 0 }),
      madeStep('proof', 'proof', { handsSeconds: 0, waitSeconds: 6600 }),
      madeStep('bake', 'bake', {
        per: 'piece',
        handsSeconds: 0,
        waitSeconds: 2400,
        uses: ['oven'],
      }),
    ]
    const levels = madePlan().levels.slice(0, 3)
    const plan = madePlan({ levels, steps, warmUpPiece: false, flights: 1, doughs: 'apart' })
    const session = inDoughOrder(dealt(plan))
    const minutes = (one: Session) =>
      plannedTimes(plan, one).map(({ waitedSeconds }) => waitedSeconds / 60)
    expect(minutes(session)).toEqual([0, 0, 0])
    const loads = session.dealt.loads.map((load, at, all) => ({ ...load, number: all.length - at }))
    expect(minutes({ ...session, dealt: { ...session.dealt, loads } })).toEqual([0, 51.25, 102.5])
  })

  // Rests of 20, 30 and 40 min, a dough each: begun 36 min apart less the longer rest, so that none waits for the oven.
  it('begins a dough that rests longer sooner, and no piece waits', () => {
    const steps = [
      madeStep('mix', 'mix', { handsSeconds: 300, waitSeconds: 0 }),
      madeStep('rest', 'rest', { handsSeconds: 0, waitSeconds: 1800 }),
      madeStep('bake', 'bake', {
        per: 'piece',
        handsSeconds: 60,
        waitSeconds: 2100,
        uses: ['oven'],
      }),
    ]
    const levels = madePlan()
      .levels.slice(0, 3)
      .map((level, at) => ({ ...level, value: 20 + 10 * at }))
    const factor = {
      ...{ name: 'rest', unitOfMeasure: 'min', splitsAt: 'mix' as const, held: 'flour' as const },
      acts: { on: 'rest-time' as const, stepId: 'rest' },
    }
    const plan = madePlan({ levels, steps, factor, warmUpPiece: false, flights: 1 })
    const times = plannedTimes(plan, dealt(plan))
    expect(times.map(({ waitedSeconds }) => waitedSeconds)).toEqual([0, 0, 0])
  })

  // Rested: both are tasted when the last is cool. Out at 5240 and 5720 s, 15 s for the pull, cooling 3600 s: so aged 4095 and 3615 s.
  it('lets rested pieces wait for the last', () => {
    const cool = madeStep('cool', 'cool', { per: 'piece', handsSeconds: 0, waitSeconds: 3600 })
    const steps = [...madePlan().steps, cool]
    const plan = madePlan({ ...twoLevels, flights: 1, steps, serving: 'rested' })
    const session = inDoughOrder(dealt(plan))
    expect(plannedTimes(plan, session).map(({ ageSeconds }) => ageSeconds)).toEqual([4095, 3615])
  })

  // Cold for 12, 24 and 48 h, 240 s a bake, mixed apart. All in one load: each dough is begun its difference later, and all are
  // out together, but for the hands. One place: one bake of 20 + 240 s, a pull of 15 s and 60 s of recovery after another.
  it.each([3, 1])('brings doughs of 12, 24 and 48 cold hours together, places: %i', (places) => {
    const cold = madeStep('cold', 'cold-proof', { handsSeconds: 0 })
    const cool = madeStep('cool', 'cool', { per: 'piece', handsSeconds: 0, waitSeconds: 3600 })
    const [mix, bake] = ['mix', 'bake'].flatMap((id) =>
      madePlan().steps.filter((step) => step.id === id),
    )
    if (!mix || !bake) throw new Error('no mix or bake')
    const plan = madePlan({
      steps: [mix, cold, bake, cool],
      factor: {
        ...{ name: 'cold', unitOfMeasure: 'h', splitsAt: 'proof', held: 'flour' },
        acts: { on: 'cold-hours', stepId: 'cold' },
      },
      levels: [12, 24, 48].map((value) => ({
        ...{ id: `lv-${value}`, value, label: `${value}`, control: value === 24 },
      })),
      ...{ doughs: 'apart', flights: 1, warmUpPiece: false, serving: 'rested' },
      placesPerLoad: places,
    })
    const times = plannedTimes(plan, dealt(plan))
    expect(times.every(({ waitedSeconds }) => Math.abs(waitedSeconds) <= 300)).toBe(true)
    const ages = times.map(({ ageSeconds }) => ageSeconds)
    const apart = Math.max(...ages) - Math.min(...ages)
    expect([apart >= 0, apart <= (places === 3 ? 300 : 670 + 240)]).toEqual([true, true])
    if (places === 1) expect(apart).toBeGreaterThanOrEqual(670)
  })

  // One dough, 20 + 240 s a bake, three places: at three temperatures one piece after another, at one all at once. Drawn as
  // 5, 3, 4 °C: the oven cools 2 K at 20 s each, then heats 1 K in 6 s, both less than the 60 s until it is as hot again: each
  // 260 + 15 + 60 after the one before. All at once, the hands launch one after another, 20 s each.
  it('lets a piece at another temperature wait until the oven is empty', () => {
    const plan = (on: 'bake-temperature' | 'bake-time') =>
      madePlan({
        factor: {
          ...{ name: 'oven', unitOfMeasure: '', splitsAt: 'oven', held: 'piece' },
          acts: { on, stepId: 'bake' },
        },
        levels: [3, 4, 5].map((value) => ({
          ...{ id: `lv-${value}`, value, label: `${value}`, control: value === 4 },
        })),
        ...{ doughs: 'one', flights: 1, warmUpPiece: false, placesPerLoad: 3 },
      })
    const waits = (on: 'bake-temperature' | 'bake-time') =>
      plannedTimes(plan(on), dealt(plan(on))).map(({ waitedSeconds }) => waitedSeconds)
    expect(waits('bake-temperature')).toEqual([0, 335, 670])
    expect(Math.max(...waits('bake-time'))).toBeLessThanOrEqual(60)
  })

  it('is empty without a bake', () => {
    const plan = madePlan({ steps: [madeStep('mix', 'mix')] })
    expect(plannedTimes(plan, dealt(plan))).toEqual([])
  })
})
