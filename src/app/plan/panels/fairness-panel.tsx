import { lazy, memo, Suspense, useMemo } from 'react'
import { Section } from '@/app/kit/page/section.tsx'
import { judgedParts } from '@/app/plan/page/judged-parts.ts'
import { useLearnedWork } from '@/app/plan/page/learned-context.ts'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { useArrivalHere } from '@/app/plan/page/use-arrival-here.ts'
import { useLoggedWhole } from '@/app/plan/page/use-logged-whole.ts'
import { usePlanParts } from '@/app/plan/page/use-plan-parts.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { answerOf, useAnswer } from '@/app/worker/use-answer.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import { FairnessList } from './fairness-list.tsx'
import { FairnessThresholds } from './fairness-thresholds.tsx'
import styles from './panel.module.css'

const LoggedFairness = lazy(async () => ({
  default: (await import('./logged-fairness.tsx')).LoggedFairness,
}))

/** What rides along with the factor and what weakens the design: how much, why, and the remedy, by one press where it can be. */
export const FairnessPanel = memo(function FairnessPanel() {
  const plan = usePlanParts(judgedParts)
  const kitchen = usePlanPage((page) => page.kitchen)
  const { trial, sessions } = useWholeTrial()
  const { seed } = trial
  const logged = useLoggedWhole()
  const learned = useLearnedWork(plan, kitchen)
  const question = useMemo(
    () => ({ plan, circumstances: { kitchen, trialSeed: seed, sessions, learned } }),
    [plan, kitchen, seed, sessions, learned],
  )
  const answer = answerOf(
    useAnswer('plan', question, async (service, asked) => ({
      plan: asked.plan,
      items: await service.fairness(asked.plan, asked.circumstances),
    })),
  )
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
