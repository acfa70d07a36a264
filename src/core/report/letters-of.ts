import { levelsOfTrial } from '@/core/findings/table/levels-of-trial.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** Letters of the levels by the id findings know them by, where every session dealt the same ones; else none, for they would mislead. */
export function lettersOf(whole: WholeTrial): Map<string, string> {
  const levels = levelsOfTrial(whole, planInForce(whole))
  const dealt = whole.sessions.map(
    ({ id, dealt: { letters } }) =>
      new Map(letters.map(({ levelId, letter }) => [levels.indexOf(levelId, id), letter])),
  )
  const [first, ...rest] = dealt
  const alike = rest.every((letters) =>
    [...(first ?? [])].every(([level, letter]) => letters.get(level) === letter),
  )
  if (!first || !alike) return new Map()
  return new Map(
    levels.list.flatMap(({ id }, level) => {
      const letter = first.get(level)
      return letter === undefined ? [] : [[id, letter] as const]
    }),
  )
}
