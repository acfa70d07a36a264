import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { shownRung } from '@/core/wording/findings/answer-of-rung.ts'

/**
 * The level to carry on with and the one to set against it: the one the conclusion ends with (else the best by its mean in
 * the better direction), against the control, or the next best where the winner is the control. Null without means.
 */
export function winnerAndRival(
  plan: Plan,
  findings: FindingsDocument,
): { winner: Level; rival: Level } | null {
  const main = findings.responses[0]
  const rung = main ? shownRung(main) : null
  const answer = main && rung ? main[rung] : null
  if (!main || !answer || !isPresent(answer)) return null
  const better = plan.responses.find(({ id }) => id === plan.mainResponseId)?.better
  const worth = (mean: number) => {
    if (better?.is === 'lower') return -mean
    return better?.is === 'target' ? -Math.abs(mean - better.at) : mean
  }
  const ranked = answer.means
    .toSorted((a, b) => worth(b.estimate) - worth(a.estimate))
    .flatMap(({ level }) => plan.levels.find(({ id }) => id === level) ?? [])
  const { level: ending } = main.conclusion.ending
  const winner = ranked.find(({ id }) => id === ending) ?? ranked[0]
  if (!winner) return null
  const control = ranked.find((level) => level.control)
  const rival = control && control !== winner ? control : ranked.find((level) => level !== winner)
  return rival ? { winner, rival } : null
}
