import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { usePlanPage } from './plan-page-context.ts'

/** The letters of the latest session that runs this plan, by level; none before one is dealt. */
export function useLetters(): ReadonlyMap<string, string> {
  const { sessions } = useWholeTrial()
  const planId = usePlanPage((page) => page.plan.id)
  const latest = sessions
    .filter((session) => session.planId === planId)
    .toSorted((a, b) => a.number - b.number)
    .at(-1)
  return new Map(latest?.dealt.letters.map(({ levelId, letter }) => [levelId, letter]))
}
