import { wholeBetween } from '@/app/plan/field/field-checks.ts'
import { NumberGrid } from '@/app/plan/field/number-grid.tsx'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { lockedSince } from '@/app/plan/page/locked-since.ts'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanSection } from '@/app/plan/page/plan-section.tsx'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { mostSessions, withSessions } from '@/core/plan-edits/day/sessions.ts'
import { SessionList } from './session-list.tsx'

const sessionsCheck = wholeBetween(1, mostSessions)
const handsCheck = wholeBetween(1, 20)

/** How often the whole is made again: what lets the factor be told from one day's luck; fixed before the first mix. */
export function SessionsSection() {
  const planned = usePlanPage((page) => page.plan.plannedSessions)
  const hands = usePlanPage((page) => page.plan.pairsOfHands)
  const locked = lockedSince(useWholeTrial().events) !== null
  const { change } = usePlanActions()
  return (
    <PlanSection id="plan-sessions">
      <NumberGrid>
        <PlanNumber
          field="sessions"
          path="/plannedSessions"
          label="Sessions planned"
          hint="One session tells about these doughs; two or more begin to tell about the factor."
          value={planned}
          check={sessionsCheck}
          onValue={(next) => change((plan) => withSessions(plan, next))}
          disabled={locked}
        />
        <PlanNumber
          field="hands"
          path="/pairsOfHands"
          label="Pairs of hands"
          value={hands}
          check={handsCheck}
          onValue={(next) => change((plan) => ({ ...plan, pairsOfHands: next }))}
        />
      </NumberGrid>
      <SessionList />
    </PlanSection>
  )
}
