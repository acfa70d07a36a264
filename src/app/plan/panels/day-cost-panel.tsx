import { memo, useDeferredValue, useMemo } from 'react'
import { Section } from '@/app/kit/page/section.tsx'
import { judgedParts } from '@/app/plan/page/read-parts.ts'
import { usePlanParts } from '@/app/plan/page/use-plan-parts.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { dayCost } from '@/core/clock-plan/day-cost.ts'
import { previewNextSession } from '@/core/session/preview-sessions.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { massText } from '@/core/units/mass-text.ts'
import { daySentence } from '@/core/wording/plan/day-sentence.ts'
import styles from './panel.module.css'

/** What one session costs: dough, tubs, oven time, hands-on hours, bites a mouth. */
export function DayCostPanel() {
  const { trial, sessions } = useWholeTrial()
  return (
    <DayCost
      plan={useDeferredValue(usePlanParts(judgedParts))}
      seed={trial.seed}
      sessions={sessions}
    />
  )
}

interface DayCostProps {
  plan: Plan
  seed: number
  sessions: readonly Session[]
}

const DayCost = memo(function DayCost({ plan, seed, sessions }: DayCostProps) {
  const cost = useMemo(() => {
    const next = previewNextSession(plan, seed, sessions)
    return next.ok ? dayCost(plan, next.session) : next
  }, [plan, seed, sessions])
  if (!cost.ok)
    return (
      <Section id="plan-day" title="The day">
        <p className={styles.soft}>
          As soon as the batches can be made, dough, hours and bites stand here.
        </p>
      </Section>
    )
  const { span, rest } = daySentence(cost)
  return (
    <Section id="plan-day" title="The day" aside="one session">
      <p className={styles.words}>
        <b>{span}</b>
        {rest}
        {cost.gramsPerMouth === null ? '' : ` ${massText(cost.gramsPerMouth, 0)} to eat, each.`}
      </p>
      {cost.tooManySamples ? (
        <p className={styles.warn}>
          {cost.samplesPerSitting} samples a sitting tire a palate: six are common practice. Serve
          fewer flights or take a break between them.
        </p>
      ) : null}
    </Section>
  )
})
