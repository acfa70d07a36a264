import { memo } from 'react'
import { SideNote } from '@/app/kit/page/side-note.tsx'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { FairnessItemRow } from './fairness-item-row.tsx'
import styles from './panel.module.css'

interface Props {
  items: readonly FairnessItem[]
  /** The plan these items were found in. */
  plan: Plan
}

/** The items that want a thought, then those that were checked and are fine, folded away. */
export const FairnessList = memo(function FairnessList({ items, plan }: Props) {
  const open = items.filter((item) => item.severity !== 'fine')
  const fine = items.filter((item) => item.severity === 'fine')
  return (
    <>
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
    </>
  )
})
