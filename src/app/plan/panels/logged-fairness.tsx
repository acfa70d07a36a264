import { useMemo } from 'react'
import { loggedItems } from '@/core/fairness/fairness-of-trial.ts'
import { inTurn } from '@/core/fairness/in-turn.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { FairnessItemRow } from './fairness-item-row.tsx'
import styles from './panel.module.css'

/** What the log of the sessions so far shows, with what it asks of the next ones; nothing where it shows nothing. */
export function LoggedFairness({ whole, plan }: { whole: WholeTrial; plan: Plan }) {
  const logged = useMemo(() => loggedItems(whole), [whole])
  const items = inTurn(logged, plan.accepted).filter(({ severity }) => severity !== 'fine')
  if (items.length === 0) return null
  return (
    <>
      <h3 className={styles.heading}>As logged so far</h3>
      <ul className={styles.list} aria-label="What the log shows">
        {items.map((item) => (
          <FairnessItemRow key={item.key} item={item} plan={plan} />
        ))}
      </ul>
    </>
  )
}
