import { describe, expect, it } from 'vitest'
import { floorNow, ripenessQueue } from '@/core/fairness/at-oven/ripeness-queue.ts'
import { agenda } from '@/core/session/agenda.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { Session } from '@/core/session/session-record.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { floorText, ripenessText } from '@/core/wording/bench/at-oven-text.ts'
import { madePlan, madeStep } from '../../made-plan.ts'
import { madeLog } from '../../session/made-events.ts'
import { madeSession, nth } from '../../session/made-session.ts'

const minute = 60_000
const batch = (id: string) => ({ kind: 'batch', id }) as const

/** Loaves that are mixed, rise until a mark and are baked whole; rested, one dough in the oven at a time. */
const rested = madePlan({
  ...{ serving: 'rested', flights: 1, warmUpPiece: false, placesPerLoad: 1 },
  steps: [
    madeStep('mix', 'mix', { handsSeconds: 300 }),
    madeStep('proof', 'proof', {
      ...{
        handsSeconds: 0,
        waitSeconds: 6000,
        endsBy: { by: 'mark', mark: 'rise', risePercent: 100 },
      },
    }),
    madeStep('bake', 'bake', { per: 'batch', handsSeconds: 20, waitSeconds: 1800 }),
  ],
})

/** The doughs in the order in which the oven was dealt to take them. */
const inOvenOrder = ({ dealt, pieces }: Session) =>
  dealt.loads.flatMap(({ pieceIds }) =>
    pieceIds.flatMap((id) => pieces.find((piece) => piece.id === id)?.batchId ?? []),
  )

/** Every dough mixed at minute 0 and risen at its own minute, in the oven's order; asked at a minute what waits for the oven. */
function atOven(plan: Plan, risenAt: readonly number[]) {
  const session = madeSession(plan)
  const { events, log } = madeLog()
  const order = inOvenOrder(session)
  order.forEach((id, at) => {
    const where = (minutes: number) => ({ about: batch(id), at: minutes * minute })
    log({ kind: 'step-started', stepId: 'mix', repeat: 1 }, where(0))
    log({ kind: 'step-stopped', stepId: 'mix', repeat: 1 }, where(5))
    log({ kind: 'step-started', stepId: 'proof', repeat: 1 }, where(5))
    const risen = risenAt[at]
    if (risen !== undefined) log({ kind: 'step-stopped', stepId: 'proof', repeat: 1 }, where(risen))
  })
  const ask = (now: number) => {
    const effective = effectiveEvents(events)
    const runs = stepRuns(session, plan, effective)
    const items = agenda(session, plan, effective, now * minute)
    const queue = ripenessQueue({
      session,
      plan,
      runs,
      events: effective,
      items,
      now: now * minute,
    })
    const next = items.find(({ step, do: what }) => step.kind === 'bake' && what === 'start')
    return { queue, next, floor: floorNow(effective) }
  }
  return { session, order, log, ask }
}

describe('the queue at the oven', () => {
  it('lets the dough go first that stands ripe longest, where the order in the oven is not the one in the mouth', () => {
    const { session, order, ask } = atOven(rested, [110, 90])
    const [first = '', second = ''] = order
    const { queue, next } = ask(115)
    // The first is ripe for 5 min, the second for 25: 20 min of a proof of 100 min are 20 %.
    expect(next?.unit.id).toBe(first)
    expect(queue).toMatchObject({ by: 'mark', mayGoFirst: true })
    expect(queue?.riper?.item.unit.id).toBe(second)
    expect(queue?.riper?.percent).toBeCloseTo(20, 9)
    const said = next && ripenessText(queue, next)
    const letter = session.batches.find(({ id }) => id === second)?.letter
    expect(said?.press).toBe(`${letter} to the front`)
    expect(said?.sentence).toContain('20 % riper')
  })

  it('keeps the order of pieces that are eaten hot, and says that the findings tell', () => {
    const hot = atOven({ ...rested, serving: 'as-baked' }, [110, 90])
    const { queue, next } = hot.ask(115)
    expect(queue?.mayGoFirst).toBe(false)
    expect(next && ripenessText(queue, next)).toMatchObject({
      press: null,
      sentence: expect.stringContaining('The order stays'),
    })
  })

  it('lets hot pieces change places where nobody tastes: their order is in no mouth', () => {
    const untasted = { ...rested, serving: 'as-baked' as const, tasters: [] }
    expect(atOven(untasted, [110, 90]).ask(115).queue?.mayGoFirst).toBe(true)
  })

  it('believes the tubs before the marks: what has risen further is riper', () => {
    const { order, log, ask } = atOven(rested, [110, 90])
    const [first = '', second = ''] = order
    log({ kind: 'rise', percent: 130 }, { about: batch(first), at: 112 * minute })
    log({ kind: 'rise', percent: 100 }, { about: batch(second), at: 113 * minute })
    expect(ask(115).queue).toMatchObject({ by: 'rise', riper: null })
    // Half an hour later the tubs have told nothing new.
    expect(ask(150).queue?.by).toBe('mark')
  })

  it('reckons time and warmth where no mark tells: the warmer dough is riper', () => {
    const byClock = {
      ...rested,
      steps: rested.steps.map((step) => ({ ...step, endsBy: { by: 'clock' } as const })),
    }
    const { order, log, ask } = atOven(byClock, [105, 105])
    const [first = '', second = ''] = order
    expect(ask(106).queue).toMatchObject({ by: 'clock', riper: null })
    log({ kind: 'temperature', of: 'dough', celsius: 23 }, { about: batch(first), at: 50 * minute })
    log(
      { kind: 'temperature', of: 'dough', celsius: 26 },
      { about: batch(second), at: 51 * minute },
    )
    const { queue } = ask(106)
    expect(queue?.by).toBe('hours')
    expect(queue?.riper?.item.unit.id).toBe(second)
  })

  it('says nothing while one alone waits, or none is riper by the size that is to be known', () => {
    expect(atOven(rested, [110]).ask(115).queue).toBe(null)
    // 4 min of 100 are 4 %: less than the 5 % from which it is known.
    expect(atOven(rested, [94, 90]).ask(95).queue?.riper).toBe(null)
  })

  it('compares the floor with that of the launches before, from ten degrees on', () => {
    const { order, log, ask } = atOven(rested, [90, 90])
    const first = nth(order, 0)
    const floor = (celsius: number, at: number) =>
      log({ kind: 'temperature', of: 'oven-floor', celsius }, { at: at * minute })
    floor(285, 91)
    expect(ask(92).floor).toBe(null)
    log({ kind: 'bake-in' }, { about: batch(first), at: 92 * minute })
    log({ kind: 'bake-out' }, { about: batch(first), at: 122 * minute })
    floor(276, 123)
    expect(ask(123).floor).toBe(null)
    floor(268, 124)
    const { floor: found } = ask(124)
    expect(found).toEqual({ celsius: 268, beforeCelsius: 285 })
    expect(found && floorText(found, (celsius) => `${celsius} °C`)).toBe(
      'The floor reads 268 °C; before the others went in it read 285 °C. Wait until it is as hot again, then read it once more.',
    )
  })
})
