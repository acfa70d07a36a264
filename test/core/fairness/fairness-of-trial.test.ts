import { describe, expect, it } from 'vitest'
import { fairnessOfTrial, loggedItems, toMendInTrial } from '@/core/fairness/fairness-of-trial.ts'
import { toMend } from '@/core/fairness/in-turn.ts'
import { dealSession } from '@/core/session/deal-session.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { countedIds, madePlan } from '../made-plan.ts'
import { itemOf } from './fair-plan.ts'

type Log = { kind: Event['kind']; about: Event['about']; minute: number } & Record<string, unknown>

const minute = 60_000

/** One session of two levels, two flights, with the log that a test writes for it. */
function worked(
  log: (session: WholeTrial['sessions'][number], levelOf: Map<string, string | null>) => Log[],
  change: Partial<Plan> = {},
): WholeTrial {
  const plan = madePlan({ levels: madePlan().levels.slice(1, 3), warmUpPiece: false, ...change })
  const newId = countedIds('w')
  const dealt = dealSession({
    ...{ plan, trialSeed: 5, number: 1, earlier: [], at: 0, zone: plan.zone, newId },
  })
  if (!dealt.ok) throw new Error(dealt.reason)
  const { session } = dealt
  const levelOf = new Map(session.batches.map(({ id, levelId }) => [id, levelId]))
  const events = log(session, levelOf).map(
    ({ minute: at, ...event }, index) =>
      ({
        ...{ id: `e-${index}`, trialId: plan.trialId, sessionId: session.id, device: 'd' },
        ...{ count: index, at: at * minute, zone: plan.zone, ...event },
      }) as Event,
  )
  const trial = {
    ...{ id: plan.trialId, createdAt: 0, zone: plan.zone, planId: plan.id, seed: 5 },
    ...{ revision: 1, note: '' },
  }
  return {
    ...{ trial, plans: [plan], sessions: [session], events },
    ...{ ballots: [], photos: [], kitchen: [] },
  }
}

const batch = (id: string) => ({ kind: 'batch' as const, id })
const piece = (id: string) => ({ kind: 'piece' as const, id })

describe('the log', () => {
  it('says nothing before it is written', () => {
    expect(loggedItems(worked(() => []))).toEqual([])
    expect(loggedItems({ ...worked(() => []), sessions: [] })).toEqual([])
  })

  it('gives dough temperatures by level, the first reading of each', () => {
    // 24.0 at 61.5 %, 25.2 at 66.4 %: 1.2 °C apart. The later reading of a warm tub does not count.
    const whole = worked((session, levelOf) => [
      ...session.batches.map(({ id }) => ({
        ...{ kind: 'temperature' as const, about: batch(id), minute: 10, of: 'dough' },
        celsius: levelOf.get(id) === 'lv-mid' ? 24 : 25.2,
      })),
      ...session.batches.map(({ id }) => ({
        ...{ kind: 'temperature' as const, about: batch(id), minute: 60, of: 'dough', celsius: 30 },
      })),
    ])
    const item = itemOf(loggedItems(whole), 'dough-warmth')
    expect(item?.amount?.value).toBeCloseTo(1.2, 9)
    expect([item?.severity, item?.when]).toEqual(['fix', 'after'])
  })

  // Two hours at 24.0 °C are two hours; at 28.0 °C they are 2 × 0.935/0.788 = 2.37 (facts 4.2, minimum 2.8 °C): 17 % apart.
  it('weighs time by warmth from the first reading to the oven', () => {
    const read = (change: Partial<Plan> = {}) =>
      worked(
        (session, levelOf) =>
          session.batches.flatMap(({ id }) => {
            const celsius = levelOf.get(id) === 'lv-mid' ? 24 : 28
            const own = session.pieces.filter((one) => one.batchId === id)
            const reading = { kind: 'temperature' as const, about: batch(id), of: 'dough', celsius }
            return [
              { ...reading, minute: 10 },
              { ...reading, minute: 70 },
              ...own.map((one, at) => ({
                ...{ kind: 'bake-in' as const, about: piece(one.id), minute: 130 + 5 * at },
              })),
            ]
          }),
        change,
      )
    const item = itemOf(loggedItems(read()), 'ferment-hours')
    expect(item?.perLevel?.find(({ levelId }) => levelId === 'lv-mid')?.value).toBeCloseTo(2, 9)
    expect(item?.perLevel?.find(({ levelId }) => levelId === 'lv-high')?.value).toBeCloseTo(2.37, 2)
    expect([item?.amount?.value.toFixed(0), item?.severity]).toEqual(['17', 'fix'])
    // A starter has another curve, and nobody offers one.
    const { formula } = madePlan()
    const starter = {
      ...{ id: 'st', name: 'Starter', kind: 'starter' as const, flourSharePercent: 15 },
      parts: [
        { ingredientId: 'flour', percent: 100 },
        { ingredientId: 'water', percent: 100 },
      ],
    }
    const sourdough = read({ formula: { ...formula, preferments: [starter] } })
    expect(itemOf(loggedItems(sourdough), 'ferment-hours')).toBeUndefined()
  })

  it('counts failures by level, and those that came early', () => {
    // All of 66.4 % stuck, none of 61.5 %: 0 against 100 %.
    const whole = worked((session) =>
      session.pieces
        .filter(({ levelId }) => levelId === 'lv-high')
        .map(({ id }, at) => ({
          ...{ kind: 'failure' as const, about: piece(id), minute: 200 + at, what: 'stuck' },
        })),
    )
    const item = itemOf(loggedItems(whole), 'failures-by-level')
    expect(item?.data).toMatchObject({ failed: 2, pieces: 4, low: 0, high: 100 })
    expect(item?.severity).toBe('fix')
    expect(itemOf(loggedItems(whole), 'practice')).toBeUndefined()
  })

  it('sees folds given unequally, but not while a dough is still at it', () => {
    const folded = (session: WholeTrial['sessions'][number], done: boolean): Log[] =>
      session.batches.flatMap(({ id, levelId }) => [
        ...Array.from({ length: levelId === 'lv-high' ? 3 : 2 }, (_, at) => ({
          ...{ kind: 'step-started' as const, about: batch(id), minute: 30 + at * 20 },
          ...{ stepId: 'fold', repeat: at + 1 },
        })),
        ...(done
          ? session.pieces
              .filter(({ batchId }) => batchId === id)
              .map((one) => ({
                ...{ kind: 'step-started' as const, about: piece(one.id), minute: 100 },
                ...{ stepId: 'ball', repeat: 1 },
              }))
          : []),
      ])
    const item = itemOf(loggedItems(worked((session) => folded(session, true))), 'folds-done')
    expect(item?.data).toMatchObject({ stepId: 'fold', low: 2, high: 3 })
    expect(item?.remedies).toEqual([{ code: 'equal-folds', stepId: 'fold', repeats: 3 }])
    const still = loggedItems(worked((session) => folded(session, false)))
    expect(itemOf(still, 'folds-done')).toBeUndefined()
  })

  it('gives ages at baking and the floor before each launch', () => {
    // Mixed at 0; the flights of each level go in at 100 and 120 min (61.5 %) or 110 and 130 (66.4 %): 110 and 120 on
    // average, 10 of 115 min = 8.7 %. Floors 300 and 320 °C.
    const whole = worked((session) => [
      ...session.batches.map(({ id }) => ({
        ...{ kind: 'step-started' as const, about: batch(id), minute: 0, stepId: 'mix', repeat: 1 },
      })),
      ...session.pieces.flatMap((one) => {
        const flight = session.dealt.flights.find(({ id }) => id === one.flightId)?.number ?? 1
        const late = one.levelId === 'lv-high'
        const at = 80 + 20 * flight + (late ? 10 : 0)
        return [
          {
            ...{ kind: 'temperature' as const, about: piece(one.id), minute: at - 1 },
            ...{ of: 'oven-floor', celsius: late ? 320 : 300 },
          },
          { kind: 'bake-in' as const, about: piece(one.id), minute: at },
        ]
      }),
    ])
    const items = loggedItems(whole)
    expect(itemOf(items, 'age-baked')?.amount?.value).toBeCloseTo((10 / 115) * 100, 9)
    expect(itemOf(items, 'age-baked')?.severity).toBe('know')
    expect(itemOf(items, 'oven-floor')?.amount?.value).toBeCloseTo(20, 9)
  })

  it('takes dusting flour into the level as handled', () => {
    // 400 g of flour and 246 g of water at 61.5 %; 30 g of dusting flour: 246/430 = 57.2 %, 4.3 off where the gap is 4.9.
    const whole = worked((session, levelOf) =>
      session.batches.flatMap(({ id }): Log[] =>
        levelOf.get(id) === 'lv-mid'
          ? [
              {
                ...{ kind: 'weighed' as const, about: batch(id), minute: 1 },
                ...{ ingredientId: 'water', grams: 246 },
              },
              {
                ...{ kind: 'worked-in' as const, about: batch(id), minute: 90 },
                ...{ what: 'dusting-flour', grams: 30 },
              },
            ]
          : [],
      ),
    )
    const item = itemOf(loggedItems(whole), 'levels-handled')
    expect(item?.data).toMatchObject({ levelId: 'lv-mid', planned: 61.5, dustingGrams: 30 })
    expect(item?.data.handled).toBeCloseTo((246 / 430) * 100, 6)
    expect(item?.severity).toBe('fix')
  })

  it('counts peeks, early looks, who left, and tastings closed early', () => {
    const whole = worked((session) => [
      { kind: 'peeked', about: { kind: 'session', id: session.id }, minute: 5 },
      { kind: 'findings-looked', about: { kind: 'trial', id: 'trial-a' }, minute: 6 },
      { kind: 'findings-looked', about: { kind: 'trial', id: 'trial-a' }, minute: 7 },
      { kind: 'left', about: { kind: 'taster', id: 'ta-2' }, minute: 8 },
      {
        ...{ kind: 'tasting-closed' as const, about: { kind: 'session' as const, id: session.id } },
        ...{ minute: 9, reason: 'rain' },
      },
    ])
    const items = loggedItems(whole)
    expect(itemOf(items, 'peeks')?.amount?.value).toBe(1)
    expect(itemOf(items, 'early-looks')?.amount?.value).toBe(2)
    expect(itemOf(items, 'tasters-missing')?.data).toEqual({ late: 0, left: 1, declined: 0 })
    expect(itemOf(items, 'closed-early')?.severity).toBe('know')
    const all = fairnessOfTrial(whole).map(({ when }) => when)
    expect(new Set(all)).toEqual(new Set(['before', 'after']))
  })

  it('counts what is left to mend as the whole check does', () => {
    const careless = worked(() => [], { expectation: null, plannedSessions: 1 })
    const items = fairnessOfTrial(careless)
    expect(items.filter(({ severity }) => severity === 'fix').length).toBeGreaterThan(
      toMendInTrial(careless),
    )
    expect(toMendInTrial(careless)).toBe(toMend(items))
    expect(toMendInTrial(careless)).toBeGreaterThan(0)
  })
})
