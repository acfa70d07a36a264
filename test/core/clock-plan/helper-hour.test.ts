import { expect, it } from 'vitest'
import { searchedClock } from '@/core/clock-plan/clock-of-plan.ts'
import { agenda } from '@/core/session/agenda.ts'
import { departures } from '@/core/session/departures.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { DayWishes } from '@/core/trial/day-wishes.ts'
import { beforeTheDay } from '@/core/wording/plan/clock-day-text.ts'
import { civilMoment, wallClock } from '@/core/wording/words/civil-moment.ts'
import { madePlan, madeStep } from '../made-plan.ts'
import { madeLog } from '../session/made-events.ts'
import { madeSession } from '../session/made-session.ts'
import { countedBudget } from './search/counted-budget.ts'

const zone = 'Europe/Zurich'
const at = (hour: number, minute = 0) =>
  civilMoment({ year: 2026, month: 12, day: 5, hour, minute }, zone)

/** Four doughs from 9:00 on: mixed for five minutes each, rested for an hour, shaped for twenty. */
const planned = (day: DayWishes) =>
  madePlan({
    ...{
      flights: 1,
      warmUpPiece: false,
      zone,
      day: { fixed: { what: 'start', at: at(9) }, ...day },
    },
    steps: [
      madeStep('mix', 'mix', { handsSeconds: 300 }),
      madeStep('rest', 'rest', {
        ...{ handsSeconds: 0, waitSeconds: 3600, earlySeconds: 300, lateSeconds: 1500, uses: [] },
      }),
      madeStep('shape', 'ball', { handsSeconds: 1200, waitSeconds: 1800, lateSeconds: 1500 }),
      madeStep('bake', 'bake', { handsSeconds: 20, waitSeconds: 240 }),
    ],
  })

function found(day: DayWishes) {
  const plan = planned(day)
  const session = madeSession(plan)
  const searched = searchedClock(plan, session, wallClock(zone), countedBudget(3000))
  const busy = (moment: number) =>
    searched.picture.hands.filter(
      ({ fromSeconds, toSeconds }) => fromSeconds <= moment && moment < toSeconds,
    ).length
  return { plan, session, searched, busy }
}

it('a helper’s hour shortens the day, is used in that hour and at no other time, and is said before the day', () => {
  const helper = { fromAt: at(10), untilAt: at(11) }
  const alone = found({})
  const helped = found({ helpers: [helper] })
  const span = ({ searched }: ReturnType<typeof found>) =>
    searched.picture.toSeconds - searched.picture.fromSeconds
  expect(span(helped)).toBeLessThan(span(alone))
  const origin = helped.searched.originAt ?? 0
  expect(origin).toBe(at(9))
  const [from, until] = [(helper.fromAt - origin) / 1000, (helper.untilAt - origin) / 1000]
  let together = 0
  for (let moment = 0; moment < helped.searched.picture.toSeconds; moment += 10) {
    const hands = helped.busy(moment)
    const may = moment >= from && moment < until ? 2 : 1
    expect([moment, hands <= may]).toEqual([moment, true])
    if (hands === 2) together += 10
  }
  expect(together).toBeGreaterThan(0)
  expect(beforeTheDay(helped.plan, 4)).toContain('Helper 1: Saturday, 5 December, 10:00 to 11:00.')
})

it('two pairs of hands at two doughs at once are one log: both run, and nothing is otherwise than planned', () => {
  const { plan, session } = found({ helpers: [{ fromAt: at(10), untilAt: at(11) }] })
  const { events, log } = madeLog(session.id)
  const [one = '', other = ''] = session.dealt.doughOrder
  const entry = (
    kind: 'step-started' | 'step-stopped',
    id: string,
    moment: number,
    device: string,
  ) => log({ kind, stepId: 'mix', repeat: 1 }, { about: { kind: 'batch', id }, at: moment, device })
  entry('step-started', one, at(9), 'baker')
  entry('step-started', other, at(9), 'helper')
  const running = agenda(session, plan, effectiveEvents(events), at(9, 2))
  const ends = running.filter(({ do: what }) => what === 'end')
  expect(ends).toHaveLength(2)
  expect(new Set(ends.map(({ unit }) => unit.id))).toEqual(new Set([one, other]))
  entry('step-stopped', one, at(9, 5), 'baker')
  entry('step-stopped', other, at(9, 5), 'helper')
  const rests = agenda(session, plan, effectiveEvents(events), at(9, 5))
  for (const id of [one, other])
    expect(rests.find(({ unit }) => unit.id === id)).toMatchObject({ step: { id: 'rest' } })
  expect(departures({ plan, session, events, kitchen: [] })).toEqual([])
})
