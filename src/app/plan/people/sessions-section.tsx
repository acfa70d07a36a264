import { Switch } from '@/app/kit/field/switch.tsx'
import { wholeBetween } from '@/app/plan/field/field-checks.ts'
import { NumberGrid } from '@/app/plan/field/number-grid.tsx'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanSection } from '@/app/plan/page/plan-section.tsx'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import { useLocked } from '@/app/plan/page/use-locked.ts'
import { withSessions } from '@/core/plan-edits/parts/in-part.ts'
import { withWrittenFirst } from '@/core/plan-edits/start/with-written-first.ts'
import { most } from '@/core/record/most.ts'
import { SessionList } from './session-list.tsx'

const sessionsCheck = wholeBetween(1, most.plannedSessions)
const handsCheck = wholeBetween(1, most.pairsOfHands)
const nothing = { mostSessions: null, looks: false }

/** How often the whole is made again: what lets the factor be told from one day's luck; fixed before the first mix. */
export function SessionsSection() {
  const planned = usePlanPage((page) => page.plan.plannedSessions)
  const hands = usePlanPage((page) => page.plan.pairsOfHands)
  const written = usePlanPage((page) => page.plan.writtenFirst) ?? nothing
  const locked = useLocked()
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
        <PlanNumber
          field="most-sessions"
          path="/writtenFirst/mostSessions"
          label="At most"
          hint="If more may follow than planned, say how many there will be at most; leave it empty if not."
          value={written.mostSessions}
          check={sessionsCheck}
          onValue={(mostSessions) => change((plan) => withWrittenFirst(plan, { mostSessions }))}
          may="be-empty"
          disabled={locked}
        />
      </NumberGrid>
      <Switch
        label="Look at the findings after each session"
        hint="From the second session on. Whoever looks early may stop early, so the answer then has to be clearer."
        on={written.looks}
        onSwitch={(looks) => change((plan) => withWrittenFirst(plan, { looks }))}
        disabled={locked}
      />
      <TroubleHere at="/writtenFirst/looks" />
      <SessionList />
    </PlanSection>
  )
}
