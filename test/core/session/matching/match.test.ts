import { describe, expect, it } from 'vitest'
import { agenda } from '@/core/session/agenda.ts'
import { departures } from '@/core/session/departures.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { Unit } from '@/core/session/line.ts'
import { isMatchable, matchOf, oneMore } from '@/core/session/matching/match.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { madePlan } from '../../made-plan.ts'
import { madeLog } from '../made-events.ts'
import { madeSession } from '../made-session.ts'

const minute = 60_000
const plan = madePlan()
const session = madeSession(plan)
const [a, b, c, d] = session.dealt.doughOrder.map((id): Unit => ({ kind: 'batch', id })) as [
  Unit,
  Unit,
  Unit,
  Unit,
]

/** A day into which steps are pressed by minutes from its beginning. */
function day() {
  const { events, log } = madeLog()
  const press = (about: Unit, at: number, entry: BenchEntry) => {
    const { about: _about, at: _at, ...bare } = entry
    return log(bare as Parameters<typeof log>[0], { about, at: at * minute })
  }
  const step = (about: Unit, stepId: string, repeat: number, from: number, to?: number) => {
    press(about, from, { kind: 'step-started', about, stepId, repeat })
    if (to !== undefined) press(about, to, { kind: 'step-stopped', about, stepId, repeat })
  }
  const runs = () => stepRuns(session, plan, effectiveEvents(events))
  const departed = () =>
    departures({ session, plan, events })
      .filter(isMatchable)
      .filter(({ unit }) => unit.id === a.id)
  return { events, press, step, runs, departed }
}
const ids = (units: readonly Unit[]) => units.map(({ id }) => id)

describe('matching the others to a dough that was handled otherwise', () => {
  it('asks one fold more of those that are not past their folds', () => {
    const { step, press, runs, departed } = day()
    for (const dough of [a, b, c]) step(dough, 'mix', 1, 0, 8)
    step(a, 'fold', 1, 40, 62)
    step(a, 'fold', 2, 62, 84)
    for (const entry of oneMore(
      a,
      'fold',
      runs().filter(({ unit }) => unit.id === a.id),
    ))
      press(a, 84, entry)
    step(a, 'fold', 3, 84, 106)
    // B was shaped already: its pieces are begun.
    const ball = session.pieces.find(({ batchId }) => batchId === b.id)?.id ?? ''
    step({ kind: 'piece', id: ball }, 'ball', 1, 100)
    const [extra] = departed().filter(({ what }) => what === 'step-extra')
    if (!extra) throw new Error('a third fold was done')
    const match = matchOf(extra, runs(), 106 * minute)
    expect([ids(match.had), ids(match.can), ids(match.past)]).toEqual([[], [c.id, d.id], [b.id]])
    expect(match.press).toEqual([
      { kind: 'step-added', about: c, stepId: 'fold', repeat: 3 },
      { kind: 'step-added', about: d, stepId: 'fold', repeat: 3 },
    ])
    for (const entry of match.press) press(entry.about as Unit, 107, entry)
    expect(ids(matchOf(extra, runs(), 108 * minute).had)).toEqual([c.id, d.id])
    // What was asked of C is asked for by the bench, after its last planned fold.
    const folds = runs().filter(({ unit, step }) => unit.id === c.id && step.id === 'fold')
    expect(folds.map(({ repeat, added }) => [repeat, added])).toEqual([
      [1, false],
      [2, false],
      [3, true],
    ])
  })

  it('gives the same longer wait to those whose wait still runs or is to come, and the bench waits for it', () => {
    const { step, press, runs, departed, events } = day()
    for (const dough of [a, b, c, d]) step(dough, 'mix', 1, 0, 8)
    // Planned 30 min, good to 2.
    step(a, 'rest', 1, 8, 50)
    step(b, 'rest', 1, 8, 38)
    step(c, 'rest', 1, 20)
    const [longer] = departed()
    if (longer?.what !== 'wait') throw new Error('the rest was 12 min longer')
    const match = matchOf(longer, runs(), 50 * minute)
    expect([ids(match.had), ids(match.can), ids(match.past)]).toEqual([[], [c.id, d.id], [b.id]])
    expect(match.press[0]).toEqual({
      kind: 'wait-changed',
      about: c,
      stepId: 'rest',
      repeat: 1,
      moreSeconds: 720,
    })
    for (const entry of match.press) press(entry.about as Unit, 50, entry)
    const [item] = agenda(session, plan, effectiveEvents(events), 51 * minute).filter(
      ({ unit }) => unit.id === c.id,
    )
    // 20 + 30 + 12 min.
    expect(item).toMatchObject({ do: 'end', dueAt: 62 * minute })
    expect(ids(matchOf(longer, runs(), 51 * minute).had)).toEqual([c.id, d.id])
  })

  it('cannot shorten a wait that was longer already', () => {
    const { step, runs, departed } = day()
    for (const dough of [a, b, c, d]) step(dough, 'mix', 1, 0, 8)
    step(a, 'rest', 1, 8, 20)
    step(b, 'rest', 1, 8)
    const [shorter] = departed()
    if (shorter?.what !== 'wait') throw new Error('the rest was 18 min shorter')
    // Twelve minutes were done: at 8 + 15 B has rested for longer than 12 and its 2.
    expect(ids(matchOf(shorter, runs(), 23 * minute).past)).toEqual([b.id])
    expect(ids(matchOf(shorter, runs(), 21 * minute).can)).toContain(b.id)
  })

  it('a repeat that was asked for and then left out is as planned', () => {
    const { step, press, departed } = day()
    step(a, 'mix', 1, 0, 8)
    press(a, 9, { kind: 'step-added', about: a, stepId: 'fold', repeat: 3 })
    press(a, 10, { kind: 'step-skipped', about: a, stepId: 'fold', repeat: 3 })
    expect(departed()).toEqual([])
  })
})
