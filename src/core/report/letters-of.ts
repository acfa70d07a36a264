import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** Letters of the levels by level id, where every session dealt the same ones; else none, for they would mislead. */
function lettersOf(whole: WholeTrial): Map<string, string> {
  const dealt = whole.sessions.map(({ dealt: { letters } }) => letters)
  const first = dealt[0] ?? []
  const alike = dealt.every((letters) =>
    first.every(({ levelId, letter }) =>
      letters.some((other) => other.levelId === levelId && other.letter === letter),
    ),
  )
  return new Map(alike ? first.map(({ levelId, letter }) => [levelId, letter]) : [])
}

/** The same by the name findings give a level: its number, or an option's label. */
export function lettersByName(whole: WholeTrial): Map<string, string> {
  const letters = lettersOf(whole)
  return new Map(
    planInForce(whole).levels.flatMap(({ id, value, label }) => {
      const letter = letters.get(id)
      return letter === undefined ? [] : [[String(value ?? label), letter]]
    }),
  )
}
