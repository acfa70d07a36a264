import { describe, expect, it } from 'vitest'
import type { Unit } from '@/core/session/line.ts'
import { dayAnewText } from '@/core/wording/bench/day-anew-text.ts'
import { randomPlan } from '../../clock-plan/random-plan.ts'
import { nth } from '../made-session.ts'
import { begun, dayUntil, plan } from './worked-day.ts'

describe('the day made anew from the log', () => {
  it('is silent before the first entry and after the last', () => {
    expect(dayUntil({ plan }, -1).anew(0)).toBe(null)
    expect(dayUntil({ plan }, 1e6).anew(1e6)).toBe(null)
  })

  it('stays the planned day while all is done when it is due', () => {
    const { day } = dayUntil({ plan }, -1)
    for (const until of [400, 1500, 5000, 8000]) {
      const anew = dayUntil({ plan }, until).anew(until)
      expect([until, anew?.late, anew?.wait]).toEqual([until, [], null])
      const off = ((anew?.goOn.endAt ?? 0) - begun) / 1000 - day.spanSeconds
      expect([until, Math.abs(off) <= 120]).toEqual([until, true])
      expect(anew?.plannedEndAt).toBe(begun + day.spanSeconds * 1000)
    }
  })

  it('says which dough is late, and lets the others wait as long where that makes them equal again', () => {
    const { session } = dayUntil({ plan }, -1)
    const [first = '', ...others] = session.dealt.doughOrder
    // The first dough rests from 20 min on for an hour; at 99 min nobody has shaped it: 19 min more. The others, mixed 20 min
    // apart, rest still.
    const holds = ({ id }: Unit, stepId: string, what: string) =>
      id === first && stepId === 'rest' && what === 'end' ? 1e6 : 0
    const at = 99 * 60
    const late = dayUntil({ plan }, at, holds)
    const anew = late.anew(at)
    expect(anew?.late).toEqual([
      { batchId: first, stepId: 'rest', repeat: 1, seconds: 1140, over: false, ahead: false },
    ])
    // Gone on with at once it is 20 min older than the others at the oven; some of that the waits' tolerance takes back.
    expect(anew?.goOn.ageSpreadSeconds).toBeGreaterThan(600)
    expect(anew?.wait?.ageSpreadSeconds).toBeLessThan((anew?.goOn.ageSpreadSeconds ?? 0) - 600)
    expect(anew?.wait?.units.map(({ id }) => id).toSorted()).toEqual(others.toSorted())
    expect(anew?.wait?.press).toHaveLength(3)
    const said = anew && dayAnewText(anew, session, plan, begun + at * 1000)
    const letters = (ids: readonly string[]) =>
      session.batches.filter(({ id }) => ids.includes(id)).map(({ letter }) => letter)
    const [a = ''] = letters([first])
    expect(said?.sentence).toMatch(
      new RegExp(
        `^${a} is 19 min past its rest. Going on: ages at the oven are 1\\d min .*apart, `,
      ),
    )
    const [b, c, d] = letters(others).toSorted((one, other) => one.localeCompare(other))
    expect(said?.wait?.press).toBe(`Let ${b}, ${c} and ${d} wait 19 min longer too`)
    expect(said?.wait?.after).toMatch(/^Then all is done at .*, 1\d min later than planned\.$/)
    // The press is what the notebook takes; after it nothing is offered again, and the Bench asks for the longer waits.
    for (const entry of anew?.wait?.press ?? []) late.press(entry, at)
    expect(late.anew(at)?.wait).toBe(null)
    expect(late.anew(at)?.goOn.ageSpreadSeconds).toBe(anew?.wait?.ageSpreadSeconds)
  })

  it('a mark is not late before it is there, and sets its own time once it is', () => {
    const marked = {
      ...plan,
      steps: plan.steps.map((step) =>
        step.id === 'rest' ? { ...step, endsBy: { by: 'mark', mark: 'poke' } as const } : step,
      ),
    }
    const { session } = dayUntil({ plan: marked }, -1)
    const [first = ''] = session.dealt.doughOrder
    const holds = (seconds: number) => (unit: Unit, stepId: string, what: string) => {
      if (unit.id !== first || what !== 'end') return 0
      return stepId === 'rest' ? seconds : 0
    }
    const at = (minutes: number) => minutes * 60
    expect(dayUntil({ plan: marked }, at(99), holds(1e6)).anew(at(99))?.late).toEqual([])
    // Said to be ripe at 88 min, eight past what was expected: shaped within two minutes it is not late, standing ten it is.
    const ripe = dayUntil({ plan: marked }, at(98), (unit, stepId, what) =>
      unit.id === first && stepId === 'shape' ? 1e6 : holds(480)(unit, stepId, what),
    )
    expect(ripe.anew(at(89))?.late).toEqual([])
    expect(nth(ripe.anew(at(98))?.late ?? [], 0)).toMatchObject({ batchId: first, seconds: 600 })
  })

  it('in seeded plans calls nothing late that was done when it was due', () => {
    for (let seed = 1; seed <= 6; seed += 1) {
      const random = randomPlan(seed)
      const { day } = dayUntil({ plan: random, seed }, -1)
      for (const share of [0.2, 0.6]) {
        const until = Math.round(day.spanSeconds * share)
        const anew = dayUntil({ plan: random, seed }, until).anew(until)
        expect([seed, share, anew?.late ?? []]).toEqual([seed, share, []])
      }
    }
  })

  it('in seeded plans answers whatever is held up, and ends no sooner than now', () => {
    for (let seed = 1; seed <= 9; seed += 1) {
      const random = randomPlan(seed)
      const { day, session } = dayUntil({ plan: random, seed }, -1)
      const [held = ''] = session.dealt.doughOrder
      const until = Math.round(day.spanSeconds * 0.4)
      const holds = (unit: Unit, _: string, what: string) =>
        unit.id === held && what === 'end' ? 900 : 0
      const anew = dayUntil({ plan: random, seed }, until, holds).anew(until)
      const begins = [...(anew?.tasks.values() ?? [])].map(({ beginAt }) => beginAt)
      expect([seed, begins.every(Number.isFinite)]).toEqual([seed, true])
      expect([seed, (anew?.goOn.endAt ?? 0) >= begun + until * 1000]).toEqual([seed, true])
    }
  })
})
