import { describe, expect, it } from 'vitest'
import { effectOf } from '@/core/fairness/effect/effect-of.ts'
import { largestByEffect } from '@/core/fairness/effect/largest-by-effect.ts'
import { effectText } from '@/core/wording/fairness/effect-text.ts'
import { itemOf, itemsOf, waterPlanOf } from './fair-plan.ts'

const ranked = (plan = waterPlanOf()) => largestByEffect(itemsOf(plan), plan)
const codes = (plan = waterPlanOf()) => ranked(plan).map(({ item }) => item.code)

describe('the largest by its effect on the answer', () => {
  it('puts what takes the verdict away first, then the larger number of points', () => {
    const plan = waterPlanOf({ mainResponseId: null, tastersTalk: true })
    const weighed = ranked(plan)
    expect(weighed[0]?.item.code).toBe('no-main-response')
    const points = weighed.flatMap(({ effect }) =>
      effect.is === 'no-verdict' ? [] : [effect.points],
    )
    expect(points).toEqual(points.toSorted((a, b) => b - a))
  })

  it('leaves out what is fine, and puts what was accepted last', () => {
    const first = codes()[0] as string
    const plan = waterPlanOf({ accepted: [first] })
    expect(codes(plan).at(-1)).toBe(first)
    expect(ranked(plan).every(({ item }) => item.severity !== 'fine')).toBe(true)
  })

  it('reckons one session by the doughs: √2 · 1.96 · √(.16 + .36/f + 1.44/(J·f)) by hand', () => {
    // Made plan: two flights, three tasters: .16 + .18 + .24 = .58; 1.96 · √1.16 = 2.11.
    const plan = waterPlanOf({ plannedSessions: 1 })
    const item = itemOf(itemsOf(plan), 'one-session')
    const effect = item && effectOf(item, plan)
    expect(effect?.is).toBe('chance')
    expect(effect && 'points' in effect && effect.points).toBeCloseTo(2.11, 2)
    expect(item && effect && effectText({ item, effect }, plan)).toBe(
      'Two doughs of one level differ by up to 2.1 points by chance alone, and once made they cannot be told from the factor.',
    )
  })

  it('reckons warmth through proof: 2 °C apart is 15.4 % of gas, 0.6 points', () => {
    const plan = waterPlanOf()
    const [any] = itemsOf(plan)
    if (!any) throw new Error('no item')
    const item = {
      ...any,
      code: 'dough-warmth',
      amount: { value: 2, unit: '°C' },
      severity: 'fix',
    } as unknown as typeof any
    const effect = effectOf(item, plan)
    expect(effect).toMatchObject({ is: 'moves', through: 'ripeness' })
    expect('points' in effect && effect.points).toBeCloseTo(0.616, 3)
    expect(effectText({ item, effect }, plan)).toBe(
      'It may move the answer by about 0.6 points, through ripeness, a tenth more proof taken as 0.4 points (common practice).',
    )
  })

  it('grows with the size of an item and never passes the scale', () => {
    const plan = waterPlanOf()
    for (const item of itemsOf(plan)) {
      if (!item.amount) continue
      const of = (times: number) => {
        const value = (item.amount?.value ?? 0) * times
        const effect = effectOf({ ...item, amount: { ...item.amount, value } } as typeof item, plan)
        return 'points' in effect ? effect.points : 0
      }
      expect(of(2)).toBeGreaterThanOrEqual(of(1))
      expect(of(1e6)).toBeLessThanOrEqual(8)
    }
  })

  it('gives no points where the main response is no liking, only the order', () => {
    const plan = waterPlanOf()
    const measured = {
      ...plan,
      responses: plan.responses.map((each) => ({
        ...each,
        scale: { kind: 'measured', unitOfMeasure: 'mm', measure: 'own' } as const,
      })),
    }
    const [first] = ranked(measured)
    expect(first && effectText(first, measured)).toMatch(/^Ranked by what it usually does/)
  })
})
