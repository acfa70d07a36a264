import { useState } from 'react'
import { RingMark } from '@/app/kit/look/ring-mark.tsx'
import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { usePlanActions } from '@/app/plan/page/plan-page-context.ts'
import { useLocked } from '@/app/plan/page/use-locked.ts'
import { applyRemedy } from '@/core/fairness/apply-remedy.ts'
import type { WeighedItem } from '@/core/fairness/effect/largest-by-effect.ts'
import { offersOf } from '@/core/fairness/offers.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { effectText } from '@/core/wording/fairness/effect-text.ts'
import { fairnessText } from '@/core/wording/fairness/fairness-text.ts'
import { remedyText } from '@/core/wording/fairness/remedy-text.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { FairnessItemRow } from './fairness-item-row.tsx'
import styles from './fairness-rows.module.css'
import { FollowUpPress } from './follow-up-press.tsx'

interface FairnessRowsProps {
  /** The items with the largest effect on the answer, the largest first. */
  items: readonly WeighedItem[]
  plan: Plan
}

/** What may move the answer most, always in view: each with one press that mends it, or that tells what helps. */
export function FairnessRows({ items, plan }: FairnessRowsProps) {
  return (
    <ul className={styles.rows} aria-label="What may move the answer most">
      {items.map((weighed) => (
        <Row key={weighed.item.key} weighed={weighed} plan={plan} />
      ))}
    </ul>
  )
}

function Row({ weighed, plan }: { weighed: WeighedItem; plan: Plan }) {
  const { item } = weighed
  const [open, setOpen] = useState(false)
  const { changeSaid } = usePlanActions()
  const { presses, inFollowUp } = offersOf(item.remedies, plan, useLocked())
  const { title, sentence } = fairnessText(item, plan)
  const [remedy] = presses
  const [later] = inFollowUp
  const fix = item.severity === 'fix'
  return (
    <li className={styles.row}>
      <span className={fix ? styles.fix : ''}>{fix ? <WarningMark /> : <RingMark />}</span>
      <div className={styles.words}>
        <button
          type="button"
          className={styles.title}
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          {title}
        </button>
        <p className={styles.sentence}>{boundUnits(sentence)}</p>
      </div>
      {remedy ? (
        <Button
          label={`${remedyText(remedy, plan)}: ${title}`}
          onPress={() =>
            changeSaid(`Done: ${remedyText(remedy, plan)}`, (now) => applyRemedy(now, remedy))
          }
        >
          {boundUnits(remedyText(remedy, plan))}
        </Button>
      ) : later ? (
        <FollowUpPress remedy={later} />
      ) : (
        <Button expanded={open} label={`What helps: ${title}`} onPress={() => setOpen(!open)}>
          What helps
        </Button>
      )}
      {open ? (
        <div className={styles.open}>
          <p>{effectText(weighed, plan)}</p>
          <ul>
            <FairnessItemRow item={item} plan={plan} />
          </ul>
        </div>
      ) : null}
    </li>
  )
}
