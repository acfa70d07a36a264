import type { Plan } from '@/core/trial/plan-record.ts'
import type { DealtDay } from './dealt-day.ts'
import type { PlannedDay } from './planned-day.ts'
import { problemOfDay } from './problem-of-day.ts'
import { type RunRow, runSheet } from './run-sheet.ts'

/** A pair of hands: one that is there all day, or a helper's by the hour, each counted from 1. */
export interface Hands {
  whose: 'own' | 'helper'
  number: number
}

type Work = Pick<RunRow, 'id' | 'beginSeconds' | 'endSeconds' | 'stepId'>

interface Pair {
  hands: Hands
  /** When they are there, in seconds of the day's clock. */
  from: number
  until: number
  /** Until when they are at work. */
  busyUntil: number
}

/**
 * Which pair of hands does what, by the row's id; `originAt` (UTC ms) is second 0. Rows are given in clock order: each goes to the
 * first pair that is free and there for all of it, the own ones before the helpers, a step that one person does for all
 * doughs to the first own pair. Where that leaves a row without hands, helpers take whatever they are there for; a row that
 * still has none is left out, since two would have to share it (own rule). Empty where nobody helps by the hour.
 */
export function whoseHands(
  rows: readonly Work[],
  plan: Pick<Plan, 'pairsOfHands' | 'day' | 'steps'>,
  originAt: number | null,
): ReadonlyMap<string, Hands> {
  const helpers = plan.day?.helpers ?? []
  if (originAt === null || helpers.length === 0) return new Map()
  const worked = rows.filter(({ beginSeconds, endSeconds }) => endSeconds > beginSeconds)
  const ofOnePerson = new Set(plan.steps.flatMap(({ id, samePerson }) => (samePerson ? [id] : [])))
  const own = Array.from(
    { length: plan.pairsOfHands },
    (_, at): Pair => ({
      hands: { whose: 'own', number: at + 1 },
      ...{ from: Number.NEGATIVE_INFINITY, until: Number.POSITIVE_INFINITY, busyUntil: -Infinity },
    }),
  )
  const byHour = helpers.map(
    ({ fromAt, untilAt }, at): Pair => ({
      hands: { whose: 'helper', number: at + 1 },
      ...{ from: (fromAt - originAt) / 1000, until: (untilAt - originAt) / 1000 },
      busyUntil: -Infinity,
    }),
  )
  const dealt = dealOut(worked, [...own, ...byHour], ofOnePerson)
  return dealt.size === worked.length ? dealt : dealOut(worked, [...byHour, ...own], ofOnePerson)
}

/** A step of one dough or piece, as the Bench asks for it. */
interface Asked {
  unit: { id: string }
  batchId: string
  step: { id: string }
  repeat: number
}

/** The same for a day that is followed: whose hands a step of one dough or piece is for; undefined where nothing tells. */
export function handsOfDay(
  plan: Plan,
  session: DealtDay,
  planned: PlannedDay,
): (asked: Asked) => Hands | undefined {
  if (planned.startAt === null || !plan.day?.helpers?.length) return () => undefined
  const { parts } = problemOfDay(plan, session)
  const rows = runSheet(parts, planned.begins, session.dealt.doughOrder)
  const hands = whoseHands(rows, plan, planned.startAt)
  return ({ unit, batchId, step, repeat }) => {
    const row = rows.find(
      (each) =>
        each.do !== 'pull' &&
        each.do !== 'over' &&
        each.batchId === batchId &&
        (unit.id === batchId || each.unitIds.includes(unit.id)) &&
        each.stepId === step.id &&
        each.repeat === repeat,
    )
    return row && hands.get(row.id)
  }
}

/** Each row to the first of the pairs that may do it. */
function dealOut(
  rows: readonly Work[],
  pairs: readonly Pair[],
  ofOnePerson: ReadonlySet<string>,
): Map<string, Hands> {
  const free = pairs.map((pair) => ({ ...pair }))
  return new Map(
    rows.flatMap(({ id, stepId, beginSeconds, endSeconds }) => {
      const pair = free.find(
        ({ hands, from, until, busyUntil }) =>
          busyUntil <= beginSeconds &&
          from <= beginSeconds &&
          endSeconds <= until &&
          (!ofOnePerson.has(stepId) || (hands.whose === 'own' && hands.number === 1)),
      )
      if (!pair) return []
      pair.busyUntil = endSeconds
      return [[id, pair.hands] as const]
    }),
  )
}
