import type { Plan } from '@/core/trial/plan-record.ts'
import { stepTolerance } from '@/core/trial/step-tolerance.ts'
import type { Placed } from './search/day-problem.ts'
import type { WorkPart } from './work-part.ts'

/** One wait of the method, as it is planned and as it comes out over all doughs and pieces; seconds. */
export interface WaitRow {
  stepId: string
  name: string
  byMark: boolean
  /** At the levels, and with what pieces of later loads wait for the oven beyond the method. */
  plannedSeconds: { least: number; most: number }
  earlySeconds: number
  lateSeconds: number
  comesOut: { least: number; most: number }
  /** Which of them is out of its tolerance, by the dough it is of. */
  off: { batchId: string; seconds: number }[]
}

/** Every wait that the day has, in the method's order. */
export function waitsOfDay(plan: Plan, parts: readonly WorkPart[], begins: Placed): WaitRow[] {
  const partOf = new Map(parts.map((part) => [part.id, part]))
  return plan.steps.flatMap((step): WaitRow[] => {
    const all = parts.flatMap((part) =>
      part.after.flatMap((after) => {
        const from = partOf.get(after.from)
        if (!from || from.step.id !== step.id || from.what === 'pull') return []
        const seconds = (begins[part.id] ?? 0) - (begins[from.id] ?? 0) - from.activeSeconds
        return [{ batchId: part.batchId, seconds, planned: after.seconds }]
      }),
    )
    if (all.length === 0 || all.every(({ seconds, planned }) => seconds === 0 && planned === 0))
      return []
    const tolerance = stepTolerance(step)
    const range = (values: readonly number[]) => ({
      least: Math.min(...values),
      most: Math.max(...values),
    })
    return [
      {
        ...{ stepId: step.id, name: step.name, byMark: step.endsBy.by !== 'clock', ...tolerance },
        plannedSeconds: range(all.map(({ planned }) => planned)),
        comesOut: range(all.map(({ seconds }) => seconds)),
        off: all.filter(
          ({ seconds, planned }) =>
            seconds < planned - tolerance.earlySeconds || seconds > planned + tolerance.lateSeconds,
        ),
      },
    ]
  })
}
