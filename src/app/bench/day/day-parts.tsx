import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { CupsPart } from '@/app/bench/cups/cups-part.tsx'
import { LogList } from '@/app/bench/log/log-list.tsx'
import { RingSection } from '@/app/bench/ring/ring-section.tsx'
import type { Ringing } from '@/app/bench/ring/use-ringing.ts'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import type { AgendaItem } from '@/core/session/agenda.ts'
import type { StepRun } from '@/core/session/step-runs.ts'
import { ComingUp, FollowTheClock } from './coming-up.tsx'
import { OffPlan } from './off-plan.tsx'
import { ServingKey } from './serving-key.tsx'

interface DayPartsProps {
  items: readonly AgendaItem[]
  runs: readonly StepRun[]
  ringing: Ringing
  /** The clock says what stands in front; false once a dough was brought there. */
  followed: boolean
  onFollow: () => void
  onPick: (item: AgendaItem) => void
}

/** The day, one swipe below: what comes next, what went otherwise and can be matched, what rings, and the log. */
export function DayParts({ items, runs, ringing, followed, onFollow, onPick }: DayPartsProps) {
  const { whole } = useBench()
  return (
    <div className={styles.day}>
      <ErrorBoundary what="the lidded cups" of={whole}>
        <CupsPart />
      </ErrorBoundary>
      {followed ? null : <FollowTheClock onPress={onFollow} />}
      <ErrorBoundary what="what comes next" of={items}>
        <ComingUp items={items} onPick={onPick} />
      </ErrorBoundary>
      <ErrorBoundary what="what went otherwise than planned" of={whole}>
        <OffPlan runs={runs} />
      </ErrorBoundary>
      <ErrorBoundary what="what rings" of={items}>
        <RingSection ringing={ringing} />
      </ErrorBoundary>
      <ErrorBoundary what="the key of the codes" of={whole}>
        <ServingKey />
      </ErrorBoundary>
      <ErrorBoundary what="the log" of={whole}>
        <LogList />
      </ErrorBoundary>
    </div>
  )
}
