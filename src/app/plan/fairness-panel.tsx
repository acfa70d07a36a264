import { memo, useMemo } from 'react'
import { Section } from '@/app/kit/section.tsx'
import { SideNote } from '@/app/kit/side-note.tsx'
import { usePlanWork } from '@/app/worker/use-plan-work.ts'
import { countText } from '@/core/wording/list-text.ts'
import { FairnessItemRow } from './fairness-item-row.tsx'
import { FairnessThresholds } from './fairness-thresholds.tsx'
import styles from './panel.module.css'
import { usePlanPage } from './plan-page-context.ts'
import { useWhole } from './whole-context.ts'

/** What rides along with the factor and what weakens the design: how much, why, and the remedy, by one press where it can be. */
export const FairnessPanel = memo(function FairnessPanel() {
  const plan = usePlanPage((page) => page.plan)
  const kitchen = usePlanPage((page) => page.kitchen)
  const { trial, sessions } = useWhole()
  const question = useMemo(
    () => ({ plan, circumstances: { kitchen, trialSeed: trial.seed, sessions } }),
    [plan, kitchen, trial.seed, sessions],
  )
  const items = usePlanWork(question, (service, asked) =>
    service.fairness(asked.plan, asked.circumstances),
  )
  if (!items)
    return (
      <Section id="plan-fairness" title="Fairness check">
        <p className={styles.soft}>Looking for what rides along with the level.</p>
      </Section>
    )
  const open = items.filter((item) => item.severity !== 'fine')
  const fine = items.filter((item) => item.severity === 'fine')
  const toFix = open.filter((item) => item.severity === 'fix').length
  return (
    <Section
      id="plan-fairness"
      title="Fairness check"
      aside={toFix > 0 ? `${countText(toFix, 'thing')} to fix before you start` : 'nothing to fix'}
    >
      {open.length === 0 ? (
        <p className={styles.words}>Nothing rides along that is worth minding.</p>
      ) : null}
      <ul className={styles.list} aria-label="What rides along">
        {open.map((item) => (
          <FairnessItemRow key={item.key} item={item} plan={plan} />
        ))}
      </ul>
      {fine.length > 0 ? (
        <SideNote label={`Checked and fine: ${fine.length}`}>
          <ul className={styles.list}>
            {fine.map((item) => (
              <FairnessItemRow key={item.key} item={item} plan={plan} />
            ))}
          </ul>
        </SideNote>
      ) : null}
      <FairnessThresholds />
    </Section>
  )
})
