import type { WorkedUnit } from './dealt-day.ts'
import type { Placed } from './search/day-problem.ts'
import type { WorkPart } from './work-part.ts'

/** One thing for the hands to do, in seconds from the plan's origin. */
export interface RunRow {
  id: string
  /** The same whenever this day is planned anew, and for the session once it is begun: dough, step, repeat and which of them. */
  key: string
  beginSeconds: number
  endSeconds: number
  /** Of which dough, counted from 1 in dough order; 0 where it is done once for all. */
  dough: number
  batchId: string
  unitIds: WorkedUnit['id'][]
  stepId: string
  name: string
  repeat: number
  repeats: number
  /** Piece by piece: how many pieces, else null for a whole dough. */
  pieces: number | null
  /** `over`: a last wait is over. */
  do: 'work' | 'launch' | 'pull' | 'over'
  /** How long it is left alone afterwards, until the hands come back to it; null for the last thing done to it. */
  waitSeconds: number | null
  /** The wait may end sooner or later than so: a mark or a reading says when. */
  waitsForMark: boolean
}

/** The planned day in clock order: what to do, with which dough, and how long it waits then. */
export function runSheet(
  parts: readonly WorkPart[],
  begins: Placed,
  doughOrder: readonly string[],
): RunRow[] {
  const at = (id: string) => begins[id] ?? 0
  const nextOf = new Map<string, number>()
  for (const part of parts)
    for (const { from } of part.after)
      nextOf.set(from, Math.min(nextOf.get(from) ?? Number.POSITIVE_INFINITY, at(part.id)))
  const counted = new Map<string, number>()
  return parts
    .map((part): RunRow => {
      const { id, batchId, step, repeat, unitIds, activeSeconds } = part
      const endSeconds = at(id) + activeSeconds
      const next = nextOf.get(id)
      const what = doOf(part)
      const dough = part.forAll ? 0 : doughOrder.indexOf(batchId) + 1
      const name = `${dough}-${step.id}-${repeat}-${what}`
      const nth = (counted.get(name) ?? 0) + 1
      counted.set(name, nth)
      return {
        ...{ id, batchId, unitIds, repeat, endSeconds, beginSeconds: at(id) },
        ...{ dough, key: `${name}-${nth}`, do: what },
        ...{ stepId: step.id, name: step.name, repeats: step.repeats },
        pieces: part.forAll || (part.whole && unitIds.length === 1) ? null : unitIds.length,
        waitSeconds: next === undefined ? null : next - endSeconds,
        waitsForMark: part.what === 'work' && step.endsBy.by !== 'clock',
      }
    })
    .toSorted((one, other) => one.beginSeconds - other.beginSeconds || one.dough - other.dough)
}

function doOf({ what, step }: WorkPart): RunRow['do'] {
  if (what !== 'work') return what
  return step.kind === 'bake' ? 'launch' : 'work'
}
