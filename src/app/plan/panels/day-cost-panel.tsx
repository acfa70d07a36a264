import { memo, useDeferredValue, useMemo } from 'react'
import { Section } from '@/app/kit/page/section.tsx'
import { judgedParts } from '@/app/plan/page/judged-parts.ts'
import { usePlanParts } from '@/app/plan/page/use-plan-parts.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { dayCost } from '@/core/clock-plan/day-cost.ts'
import { previewNextSession } from '@/core/session/preview-sessions.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
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
      <Section id="plan-day" title="What the day costs">
        <p className={styles.soft}>
          As soon as the batches can be made, dough, hours and bites stand here.
        </p>
      </Section>
    )
  const facts = [
    ['Dough', `${decimalText(cost.doughGrams / 1000, 2)} kg`],
    ['Batches', String(cost.batches)],
    ['Pieces', String(cost.pieces)],
    ['Tubs', String(cost.tubs)],
    ...(cost.fridgePlaces > 0 ? [['Places in the fridge', String(cost.fridgePlaces)]] : []),
    ['Hands on', durationText(cost.handsSeconds)],
    [
      'Oven',
      `${durationText(cost.ovenSeconds)}, ${cost.loads} ${cost.loads === 1 ? 'load' : 'loads'}`,
    ],
    ['Bites a mouth', String(cost.bitesPerMouth)],
    ...(cost.gramsPerMouth === null
      ? []
      : [['To eat, each', `${decimalText(cost.gramsPerMouth, 0)} g`]]),
    ['First hand to last thing done, about', durationText(cost.spanSeconds)],
  ]
  return (
    <Section id="plan-day" title="What the day costs" aside="one session">
      <dl className={styles.facts}>
        {facts.map(([what, howMuch]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{howMuch}</dd>
          </div>
        ))}
      </dl>
      {cost.tooManySamples ? (
        <p className={styles.warn}>
          {cost.samplesPerSitting} samples a sitting tire a palate: six are common practice. Serve
          fewer flights or take a break between them.
        </p>
      ) : null}
    </Section>
  )
})
