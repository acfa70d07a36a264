import { expect, test } from 'vitest'
import { frontLine } from '@/app/bench/day/front-line.ts'
import { linesNow, nextToBegin } from '@/app/bench/rail/line-now.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { planOf } from '../../../trial-of/plan-of.ts'
import { sessionOf } from '../../../trial-of/session-of.ts'

const [mix] = planOf().steps
if (!mix) throw new Error('the plan has steps')
const item = (batchId: string, levelId: string | null): AgendaItem => ({
  ...{ unit: { kind: 'batch', id: batchId }, batchId, letter: 'K', levelId, do: 'start' },
  ...{ units: [{ kind: 'batch', id: batchId }], handsOn: false },
  ...{ step: mix, repeat: 1, dueAt: null, earliestAt: null, latestAt: null },
  ...{ lateSeconds: null, due: 'clock' },
})
const first = item('batch-2', 'level-2')
const second = item('batch-1', 'level-1')

test('without a pick the soonest line stands in front', () => {
  expect(frontLine(sessionOf(), [first, second], null, null).item).toBe(first)
})

test('a level picked on the rail brings its own line, and what was brought by hand goes first', () => {
  expect(frontLine(sessionOf(), [first, second], 'level-1', null).item).toBe(second)
  const third = { ...second, unit: { kind: 'piece', id: 'piece-1' } } as const
  const { unit } = frontLine(sessionOf(), [first, second, third], 'level-1', third.unit)
  expect(unit).toEqual({ kind: 'piece', id: 'piece-1' })
})

test('another level picked since lets go of the piece that was brought by hand', () => {
  const found = frontLine(sessionOf(), [first, second], 'level-2', second.unit)
  expect(found.item).toBe(first)
})

test('a line that is through still takes entries, about its dough', () => {
  expect(frontLine(sessionOf(), [first], 'level-1', null)).toEqual({
    item: null,
    unit: { kind: 'batch', id: 'batch-1' },
  })
  // Dough order of the session: batch-2 first.
  expect(frontLine(sessionOf(), [], null, null).unit).toEqual({ kind: 'batch', id: 'batch-2' })
})

test('hands stay on the dough whose work they began, until by the plan its wait begins', () => {
  const kneaded = { ...mix, handsSeconds: 600, waitSeconds: 1800 }
  const soon = { ...first, dueAt: 2_100_000, lateSeconds: -2000 }
  const running = (lateSeconds: number): AgendaItem => ({
    ...{ ...second, do: 'end', step: kneaded },
    ...{ dueAt: 2_400_000, lateSeconds },
  })
  // 600 s of work and 1800 s of waiting: 2400 s before its end it has just begun, 1800 s before its end the work is over.
  for (const late of [-2400, -1801]) {
    const own = running(late)
    expect(frontLine(sessionOf(), [soon, own], null, null).item).toBe(own)
  }
  expect(frontLine(sessionOf(), [soon, running(-1800)], null, null).item).toBe(soon)
})

test('work that takes longer than planned stays in front until it is said done, for a minute though another dough is due', () => {
  const kneading = (lateSeconds: number): AgendaItem => ({
    ...{ ...second, do: 'end', handsOn: true, dueAt: 2_400_000, lateSeconds },
    step: { ...mix, handsSeconds: 600, waitSeconds: 1800 },
  })
  const begins = (lateSeconds: number) => ({ ...first, dueAt: 2_100_000, lateSeconds })
  const front = (...items: AgendaItem[]) => frontLine(sessionOf(), items, null, null).item
  // 1800 s before the end of its wait the work is over by the plan.
  const [due, later] = [begins(20), begins(-300)]
  const [over, longOver] = [kneading(-1741), kneading(-1740)]
  expect(front(due, over)).toBe(over)
  expect(front(due, longOver)).toBe(due)
  expect(front(later, longOver)).toBe(longOver)
  expect(front(later, { ...longOver, handsOn: false })).toBe(later)
})

test('what is due out of the oven, or within half a minute, stands before an older duty and before the hands', () => {
  const baked = { ...mix, kind: 'bake', handsSeconds: 20, waitSeconds: 240 } as const
  const inOven = (lateSeconds: number): AgendaItem => ({
    ...{ ...second, do: 'end', step: baked },
    ...{ dueAt: 2_400_000, lateSeconds },
  })
  const older = { ...first, dueAt: 2_000_000, lateSeconds: 400 }
  const kneading: AgendaItem = {
    ...{ ...first, do: 'end', step: { ...mix, handsSeconds: 600, waitSeconds: 0 } },
    ...{ dueAt: 2_500_000, lateSeconds: -100 },
  }
  for (const late of [-30, 60]) {
    const own = inOven(late)
    expect(frontLine(sessionOf(), [older, own, kneading], null, null).item).toBe(own)
  }
  expect(frontLine(sessionOf(), [older, inOven(-31)], null, null).item).toBe(older)
})

test('the tab that says next is that of the line which begins next, not of the lowest level', () => {
  const session = sessionOf()
  const next = (items: readonly AgendaItem[]) =>
    nextToBegin(
      linesNow(session, ['level-1', 'level-2'], items, [], () => null),
      items,
    )
  expect(next([first, second])).toBe('batch-2')
  expect(next([second, first])).toBe('batch-1')
  expect(next([{ ...first, do: 'end' }, second])).toBe('batch-1')
  expect(next([])).toBeNull()
})
