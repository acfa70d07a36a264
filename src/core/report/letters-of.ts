import { levelsOfTrial } from '@/core/findings/table/levels-of-trial.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** Letters of the levels by the id findings know them by, where there is one session; over several none, for they are dealt anew each time. */
export function lettersOf(whole: WholeTrial): Map<string, string> {
  const [only, another] = whole.sessions
  if (!only || another) return new Map()
  const levels = levelsOfTrial(whole, planInForce(whole))
  return new Map(
    only.dealt.letters.flatMap(({ levelId, letter }) => {
      const level = levels.list[levels.indexOf(levelId, only.id)]
      return level ? [[level.id, letter] as const] : []
    }),
  )
}
