import { describe, expect, it } from 'vitest'
import { applyRemedy } from '@/core/fairness/apply-remedy.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { toMend } from '@/core/fairness/in-turn.ts'
import { isPress } from '@/core/fairness/remedy.ts'
import { previewSessions } from '@/core/session/preview-sessions.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { madePlan, madeStep } from '../made-plan.ts'
import { itemOf, itemsOf } from './fair-plan.ts'

/** Everything done the way a hurried baker does it. */
const careless = (): Plan =>
  madePlan({
    ...{ expectation: null, plannedSessions: 1, flights: 3, warmUpPiece: false, servingRule: '' },
    ...{ tastersTalk: true, keyKeptBy: 'baker', pairsOfHands: 2, mainResponseId: 'sticky' },
    levels: madePlan().levels.map((level) => ({ ...level, control: false })),
    steps: [...madePlan().steps, madeStep('top', 'top', { per: 'piece' })],
    temperature: { wantedDoughCelsius: 25, flourCelsius: 22, roomCelsius: 22, matched: false },
  })

describe('weaknesses of a plan', () => {
  it('says nothing of loads and places beside the bake order where each level has an oven temperature of its own', () => {
    const oven = (on: 'bake-temperature' | 'bake-time') =>
      itemsOf(
        madePlan({
          factor: {
            ...{ name: 'oven', unitOfMeasure: '', splitsAt: 'oven', held: 'piece' },
            acts: { on, stepId: 'bake' },
          },
          ...{ doughs: 'one', placesPerLoad: 2, serving: 'rested', flights: 1, plannedSessions: 1 },
        }),
      ).map(({ code }) => code)
    expect(oven('bake-time')).toContain('load')
    expect(oven('bake-temperature')).not.toContain('load')
    expect(oven('bake-temperature')).not.toContain('oven-place')
    expect(oven('bake-temperature')).toContain('bake-order')
  })

  const items = itemsOf(careless())
  it.each([
    ['tasters-talk', 'fix'],
    ['one-session', 'fix'],
    ['baker-scores', 'fix'],
    ['serving-rule', 'fix'],
    ['many-samples', 'fix'],
    ['key-keeper', 'know'],
    ['knowing-tasters', 'know'],
    ['several-hands', 'know'],
    ['no-expectation', 'know'],
    ['no-warm-up', 'know'],
    ['no-margin', 'know'],
    ['no-control', 'know'],
    ['coarse-dose', 'fix'],
  ] as const)('finds %s, to %s', (code, severity) => {
    expect(itemOf(items, code)?.severity).toBe(severity)
  })

  it('stands with what is to be fixed first', () => {
    const weights = items.map(({ severity }) => ['fix', 'know', 'fine'].indexOf(severity))
    expect(weights).toEqual(weights.toSorted((a, b) => a - b))
    // Made once is one of them, and no rider: another session mends it, not another plan.
    expect(toMend(items)).toBe(weights.filter((weight) => weight === 0).length - 1)
  })

  it('counts the samples: twelve servings are more than six', () => {
    expect(itemOf(items, 'many-samples')?.amount?.value).toBe(12)
  })

  it('is plain data', () => {
    expect(JSON.parse(JSON.stringify(items))).toEqual(items)
  })
})

describe('remedies by one press', () => {
  const weight = ({ severity }: FairnessItem) => ['fine', 'know', 'fix'].indexOf(severity)
  const pressed = itemsOf(careless()).flatMap((item) =>
    item.remedies
      .filter(isPress)
      .map((remedy) => ({ item, remedy, name: `${item.key} ${remedy.code}` })),
  )
  it('are many', () => expect(pressed.length).toBeGreaterThan(8))
  it.each(pressed)('$name makes the item go away or smaller', ({ item, remedy }) => {
    const before = careless()
    const frozen = JSON.stringify(before)
    const after = applyRemedy(before, remedy)
    expect(JSON.stringify(before)).toBe(frozen)
    const now = itemsOf(after).find(({ key }) => key === item.key)
    const gone = !now || weight(now) < weight(item)
    const smaller = Math.abs(now?.amount?.value ?? 0) < Math.abs(item.amount?.value ?? 0)
    expect(gone || smaller).toBe(true)
  })

  it('leave the plan alone when they are advice', () => {
    const plan = careless()
    expect(applyRemedy(plan, { code: 'more-tasters' })).toBe(plan)
    expect(applyRemedy({ ...plan, flights: 1 }, { code: 'drop-flight' }).flights).toBe(1)
  })

  it('make the pieces that a flight or a warm-up needs', () => {
    const batchSize = { by: 'pieces' as const, pieces: 3, pieceGrams: 200, lossPercent: 0 }
    const plan = careless()
    const sized = { ...plan, formula: { ...plan.formula, batchSize } }
    const { formula } = applyRemedy(applyRemedy(sized, { code: 'add-flight' }), {
      code: 'add-warm-up',
    })
    expect(formula.batchSize).toEqual({ ...batchSize, pieces: 5 })
  })
})

describe('accepted items', () => {
  it('are known instead of to be fixed, and no longer to mend', () => {
    const open = itemsOf(careless())
    const taken = itemsOf({ ...careless(), accepted: ['tasters-talk'] })
    const talk = itemOf(taken, 'tasters-talk')
    expect([talk?.severity, talk?.accepted]).toEqual(['know', true])
    expect(toMend(taken)).toBe(toMend(open) - 1)
  })
})

describe('fairness does not depend on names or the order of writing', () => {
  const plan = { ...careless(), levels: madePlan().levels, plannedSessions: 2 }
  const dealt = previewSessions(plan, 11)
  const sessions = dealt.ok ? dealt.sessions : []
  const judged = (items: FairnessItem[]) =>
    items
      .map(({ key, severity, amount, perLevel }) => ({
        ...{ key, severity, amount: amount?.value.toFixed(9) },
        perLevel: perLevel
          ?.map(({ levelId, value }) => `${levelId} ${value.toFixed(9)}`)
          .toSorted(),
      }))
      .toSorted((a, b) => a.key.localeCompare(b.key))

  it('is the same with the levels written in another order', () => {
    const turned = { ...plan, levels: plan.levels.toReversed() }
    expect(sessions).toHaveLength(2)
    expect(judged(itemsOf(turned, { sessions }))).toEqual(judged(itemsOf(plan, { sessions })))
  })

  it('is the same with other letters and batch ids', () => {
    const text = JSON.stringify(sessions)
    const relabelled = sessions
      .flatMap(({ batches }) => batches)
      .reduce((so, { id }) => so.replaceAll(`"${id}"`, `"other-${id}"`), text)
      .replaceAll(/"letter":"(.)"/g, (_, letter: string) => `"letter":"Z${letter}"`)
    expect(relabelled).not.toBe(text)
    expect(judged(itemsOf(plan, { sessions: JSON.parse(relabelled) }))).toEqual(
      judged(itemsOf(plan, { sessions })),
    )
  })
})

describe('unfinished plans', () => {
  it.each([
    { levels: [] },
    { steps: [] },
    { responses: [], mainResponseId: null },
    { tasters: [] },
    { levels: madePlan().levels.slice(0, 1) },
    { formula: { ...madePlan().formula, ingredients: [] } },
  ] satisfies Partial<Plan>[])('are judged as far as they go (%#)', (change) => {
    const items = itemsOf(madePlan(change), { kitchen: [] })
    for (const { amount, perLevel } of items) {
      if (amount) expect(Number.isFinite(amount.value)).toBe(true)
      for (const { value } of perLevel ?? []) expect(Number.isFinite(value)).toBe(true)
    }
  })
})
