import { memo } from 'react'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { Fold } from '@/app/kit/page/fold.tsx'
import { lateComponent } from '@/app/kit/page/late-view.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { useLearnedSpread } from '@/app/plan/page/learned-context.ts'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { useLoggedWhole } from '@/app/plan/page/use-logged-whole.ts'
import { largestByEffect } from '@/core/fairness/effect/largest-by-effect.ts'
import { fairnessCountText, fairnessText } from '@/core/wording/fairness/fairness-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { FairnessList } from './fairness-list.tsx'
import { FairnessRows } from './fairness-rows.tsx'
import { FairnessThresholds } from './fairness-thresholds.tsx'
import styles from './panel.module.css'
import { useFairness } from './use-fairness.ts'

const LoggedFairness = lateComponent(
  async () => (await import('./logged-fairness.tsx')).LoggedFairness,
  null,
)

/** What rides along with the factor and what weakens the design: how much, why, and the remedy, by one press where it can be. */
export const FairnessPanel = memo(function FairnessPanel() {
  const logged = useLoggedWhole()
  const answer = useFairness()
  const plan = usePlanPage((page) => page.plan)
  const spread = useLearnedSpread(plan)?.spread
  if (!answer)
    return (
      <Section id="plan-fairness" title="Fairness">
        <p className={styles.soft}>Looking for what rides along with the level.</p>
      </Section>
    )
  const weighed = largestByEffect(answer.items, answer.plan, spread)
  const largest = weighed.slice(0, rowsInView)
  const more = weighed.slice(rowsInView).map(({ item }) => item)
  const fine = answer.items.filter((item) => item.severity === 'fine')
  return (
    <Section id="plan-fairness" title="Fairness" aside={fairnessCountText(answer.items)}>
      {largest.length === 0 ? (
        <p className={styles.words}>Nothing rides along that is worth minding.</p>
      ) : (
        <FairnessRows items={largest} plan={answer.plan} />
      )}
      <Fold
        level={3}
        name={
          more.length > 0
            ? asSentenceStart(`${countText(more.length, 'more', 'more')} to know`)
            : 'Checked and fine'
        }
        result={
          more.length > 0
            ? `${more
                .slice(0, 2)
                .map((item) => fairnessText(item, answer.plan).title)
                .join('; ')}${more.length > 2 ? ' …' : ''}`
            : countText(fine.length, 'thing')
        }
      >
        <FairnessList items={[...more, ...fine]} plan={answer.plan} />
        {logged ? (
          <ErrorBoundary what="what the log shows" of={logged}>
            <LoggedFairness whole={logged} plan={answer.plan} />
          </ErrorBoundary>
        ) : null}
        <FairnessThresholds />
      </Fold>
    </Section>
  )
})

/** So many stand open: the largest by their effect on the answer. */
const rowsInView = 3
