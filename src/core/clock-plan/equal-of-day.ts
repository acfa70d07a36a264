import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { EqualGroup } from './search/day-problem.ts'
import type { PullPart, WorkPart } from './work-part.ts'

/**
 * What should be equal over the lines of a flight, or of a load where pieces rest: the age at baking, from the first hand at
 * the dough to the launch, and the minutes from the oven to the last thing done. Pieces of one dough are never equally old.
 */
export function equalOfDay(
  plan: Plan,
  parts: readonly WorkPart[],
  tolerance: { ageTolerance: number; mouthToleranceSeconds: number },
): EqualGroup[] {
  const pulls = parts.flatMap((part) => (part.what === 'pull' && part.counted ? [part] : []))
  const groupOf = (pull: PullPart) => (plan.serving === 'as-baked' ? pull.flight : pull.load)
  const groups = [...new Set(pulls.map(groupOf))].map((key) =>
    pulls.filter((pull) => groupOf(pull) === key),
  )
  const firstOf = (pull: PullPart) =>
    parts.find(({ batchId, forAll }) => batchId === pull.batchId && !forAll)?.id
  const lastOf = (pull: PullPart) => parts.filter((part) => follows(part, pull)).at(-1)?.id
  return groups.flatMap((own, at): EqualGroup[] => {
    const shortest = Math.min(...own.map(({ methodSeconds }) => methodSeconds))
    const ages = own.flatMap((pull) => {
      const from = firstOf(pull)
      return from ? [{ from, to: pull.launchId, lessSeconds: pull.methodSeconds - shortest }] : []
    })
    const mouths = own.flatMap((pull) => {
      const to = lastOf(pull)
      return to ? [{ from: pull.id, to, fromEnd: true }] : []
    })
    const seconds = Math.max(...own.map(({ ageSeconds }) => ageSeconds))
    return [
      ...(mixedApart(plan)
        ? [
            {
              name: `age at baking ${at + 1}`,
              toleranceSeconds: Math.max(60, Math.floor(seconds * tolerance.ageTolerance)),
              spans: ages,
            },
          ]
        : []),
      ...(mouths.length > 0
        ? [
            {
              name: `oven to mouth ${at + 1}`,
              toleranceSeconds: tolerance.mouthToleranceSeconds,
              spans: mouths,
            },
          ]
        : []),
    ]
  })
}

const follows = (part: WorkPart, pull: PullPart) =>
  part.afterOven &&
  part.batchId === pull.batchId &&
  part.unitIds.some((id) => pull.unitIds.includes(id))
