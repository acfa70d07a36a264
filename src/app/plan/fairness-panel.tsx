import { lazy, memo, Suspense, useMemo } from 'react'
import { Section } from '@/app/kit/section.tsx'
import { usePlanWork } from '@/app/worker/use-plan-work.ts'
import { countText } from '@/core/wording/list-text.ts'
import { FairnessList } from './fairness-list.tsx'
import { FairnessThresholds } from './fairness-thresholds.tsx'
import { judgedParts } from './judged-parts.ts'
import { useLearnedWork } from './learned-context.ts'
import styles from './panel.module.css'
import { usePlanPage } from './plan-page-context.ts'
import { useArrivalHere } from './use-arrival-here.ts'
import { useLoggedWhole } from './use-logged-whole.ts'
import { usePlanParts } from './use-plan-parts.ts'
import { useSessions } from './use-sessions.ts'
import { useWhole } from './whole-context.ts'

const LoggedFairness = lazy(async () => ({
  default: (await import('./logged-fairness.tsx')).LoggedFairness,
}))

/** What rides along with the factor and what weakens the design: how much, why, and the remedy, by one press where it can be. */
export const FairnessPanel = memo(function FairnessPanel() {
  const plan = usePlanParts(judgedParts)
  const kitchen = usePlanPage((page) => page.kitchen)
  const { seed } = useWhole().trial
  const sessions = useSessions()
  const logged = useLoggedWhole()
  const learned = useLearnedWork(plan, kitchen)
  const question = useMemo(
    () => ({ plan, circumstances: { kitchen, trialSeed: seed, sessions, learned } }),
    [plan, kitchen, seed, sessions, learned],
  )
  const answer = usePlanWork(question, async (service, asked) => ({
    plan: asked.plan,
    items: await service.fairness(asked.plan, asked.circumstances),
  }))
  useArrivalHere('plan-fairness', answer !== null)
  if (!answer)
    return (
      <Section id="plan-fairness" title="Fairness check">
        <p className={styles.soft}>Looking for what rides along with the level.</p>
      </Section>
    )
  const toFix = answer.items.filter((item) => item.severity === 'fix').length
  return (
    <Section
      id="plan-fairness"
      title="Fairness check"
      aside={toFix > 0 ? `${countText(toFix, 'thing')} to fix before you start` : 'nothing to fix'}
    >
      <FairnessList items={answer.items} plan={answer.plan} />
      {logged ? (
        <Suspense fallback={null}>
          <LoggedFairness whole={logged} plan={answer.plan} />
        </Suspense>
      ) : null}
      <FairnessThresholds />
    </Section>
  )
})
