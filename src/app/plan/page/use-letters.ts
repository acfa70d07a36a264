import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { levelsUnknown } from '@/core/seal/sealed.ts'
import type { Session } from '@/core/session/session-record.ts'
import { usePlanPage } from './plan-page-context.ts'

/** The latest session that runs this plan, for what is printed of it; none before one is dealt. */
export function useLatestSession(): Session | undefined {
  return useSessionsOfPlan().at(-1)
}

/** The letters of the one session there is: over several none is true, since they are dealt anew each time. */
export function useLettersOfOne(): ReadonlyMap<string, string> {
  const sessions = useSessionsOfPlan()
  return lettersOf(sessions.length === 1 ? sessions[0] : undefined)
}

function useSessionsOfPlan(): Session[] {
  const { sessions, events } = useWholeTrial()
  const planId = usePlanPage((page) => page.plan.id)
  return sessions
    .filter((session) => session.planId === planId && !levelsUnknown(session, events))
    .toSorted((a, b) => a.number - b.number)
}

/** The letter of each level in a session; none without one. */
export function lettersOf(session: Session | undefined): ReadonlyMap<string, string> {
  return new Map(session?.dealt.letters.map(({ levelId, letter }) => [levelId, letter]))
}
