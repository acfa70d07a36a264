import { describe, expect, it } from 'vitest'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { departures } from '@/core/session/departures.ts'
import { workedLevels } from '@/core/session/worked-levels.ts'
import { madePlan } from '../made-plan.ts'
import { madeLog } from './made-events.ts'
import { madeSession, nth, pieceAt } from './made-session.ts'

const plan = madePlan()
const session = madeSession(plan)
const kitchen: KitchenThing[] = [
  { id: 'sc', kind: 'scale', name: 'bench scale', resolutionGrams: 1, capacityGrams: 5000 },
]
const batch = (id: string) => ({ kind: 'batch', id }) as const
const piece = (id: string) => ({ kind: 'piece', id }) as const
const batchOfLevel = (levelId: string) =>
  session.batches.find((one) => one.levelId === levelId)?.id ?? ''
const found = (events: Parameters<typeof departures>[0]['events']) =>
  departures({ session, plan, events, kitchen })

describe('departures', () => {
  it('finds none in an empty log', () => {
    expect(found([])).toEqual([])
  })

  it('finds doughs mixed in another order, with the number of swapped pairs', () => {
    const { events, log } = madeLog()
    const [a = '', b = '', c = ''] = session.dealt.doughOrder
    for (const id of [c, a, b])
      log({ kind: 'step-started', stepId: 'mix', repeat: 1 }, { about: batch(id) })
    // Planned a b c, done c a b: the pairs (a, c) and (b, c) are swapped.
    expect(found(events)).toEqual([
      { what: 'dough-order', stepId: 'mix', planned: [a, b, c], done: [c, a, b], swaps: 2 },
    ])
  })

  it('finds pieces baked in another order, and a bake outside its five seconds', () => {
    const { events, log } = madeLog()
    const flight = nth(session.dealt.flights, 0)
    const [a = '', b = ''] = flight.pieceIds
    const bake = (id: string, from: number, seconds: number) => {
      log({ kind: 'bake-in' }, { about: piece(id), at: from * 1000 })
      log({ kind: 'bake-out' }, { about: piece(id), at: (from + seconds) * 1000 })
    }
    bake(b, 100, 244)
    bake(a, 400, 246)
    const all = found(events)
    expect(all.filter((one) => one.what === 'bake-order')).toEqual([
      { what: 'bake-order', flightId: flight.id, planned: [a, b], done: [b, a], swaps: 1 },
    ])
    // Planned 240 s, good to 5: 244 is fine, 246 is not.
    expect(all.filter((one) => one.what === 'wait')).toMatchObject([
      { unit: { id: a }, plannedSeconds: 240, doneSeconds: 246, toleranceSeconds: 5 },
    ])
  })

  it('finds steps passed over and folds too many', () => {
    const { events, log } = madeLog()
    const id = nth(session.dealt.doughOrder, 0)
    const run = (stepId: string, repeat: number, from: number, to: number) => {
      log({ kind: 'step-started', stepId, repeat }, { about: batch(id), at: from * 1000 })
      log({ kind: 'step-stopped', stepId, repeat }, { about: batch(id), at: to * 1000 })
    }
    run('mix', 1, 0, 480)
    run('fold', 1, 480, 1800)
    run('fold', 2, 1800, 3120)
    run('fold', 3, 3120, 4440)
    expect(found(events)).toMatchObject([
      { what: 'step-missing', unit: { id }, stepId: 'rest', repeat: 1 },
      { what: 'step-extra', unit: { id }, stepId: 'fold', repeat: 3, planned: 2 },
    ])
  })

  it('finds a weight off by more than the scale and one percent', () => {
    const { events, log } = madeLog()
    const id = batchOfLevel('lv-mid')
    // Targets 400 g flour, 246 g water, 8 g salt: 406 is 1.5 % off, 247 within 1 %, 9 g one step of the scale.
    log({ kind: 'weighed', ingredientId: 'flour', grams: 406 }, { about: batch(id) })
    log({ kind: 'weighed', ingredientId: 'water', grams: 247 }, { about: batch(id) })
    log({ kind: 'weighed', ingredientId: 'salt', grams: 9 }, { about: batch(id) })
    expect(found(events)).toEqual([
      {
        what: 'weight',
        batchId: id,
        levelId: 'lv-mid',
        ingredientId: 'flour',
        prefermentId: null,
        plannedGrams: 400,
        doneGrams: 406,
        offPercent: expect.closeTo(1.5, 10),
      },
    ])
  })
})

describe('workedLevels', () => {
  it('reads a level as planned, as weighed and as handled', () => {
    const { events, log } = madeLog()
    const id = batchOfLevel('lv-high')
    const levels = () =>
      workedLevels({ plan, session, events, kitchen }).find((one) => one.batchId === id)
    expect(levels()).toMatchObject({ planned: 66.4, weighed: null, handled: null })
    log({ kind: 'weighed', ingredientId: 'flour', grams: 402 }, { about: batch(id) })
    log({ kind: 'weighed', ingredientId: 'water', grams: 200 }, { about: batch(id) })
    log({ kind: 'weighed', ingredientId: 'water', grams: 66 }, { about: batch(id) })
    // 266/402 = 66.169 %; then 5 g and 3 g of flour worked into dough and piece: 266/410 = 64.878 %.
    expect(levels()?.weighed).toBeCloseTo(66.169154, 5)
    expect(levels()?.handled).toBeCloseTo(66.169154, 5)
    log({ kind: 'worked-in', what: 'dusting-flour', grams: 5 }, { about: batch(id) })
    const own = pieceAt(session, 'lv-high')
    log({ kind: 'worked-in', what: 'dusting-flour', grams: 3 }, { about: piece(own.id) })
    expect(levels()?.weighed).toBeCloseTo(66.169154, 5)
    expect(levels()?.handled).toBeCloseTo(64.878049, 5)
  })
})
