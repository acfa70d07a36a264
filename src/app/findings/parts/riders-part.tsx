import type { FindingsSource } from '@/app/findings/findings-source.ts'
import { SideNote } from '@/app/kit/page/side-note.tsx'
import { answerOf, useAnswer } from '@/app/worker/use-answer.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { ridersSentence } from '@/core/wording/fairness/riders-sentence.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import { PartFold } from './part-fold.tsx'
import { RiderRow } from './rider-row.tsx'
import styles from './riders-part.module.css'

/** What the riders did to it: what changed along with the factor on the day, and what the plan had left to mend. */
export function RidersPart({ source: { whole } }: { source: FindingsSource }) {
  const fairness = answerOf(
    useAnswer('plan', whole, (service, trial: WholeTrial) => service.fairnessOfTrial(trial)),
  )
  if (!whole) return null
  if (!fairness)
    return (
      <PartFold title="What the riders did" result="Being looked at…">
        <p>What changed along with the factor is being looked at.</p>
      </PartFold>
    )
  const plan = planInForce(whole)
  const first = fairness.filter(
    ({ severity, when }) => severity === 'fix' || (severity === 'know' && when === 'after'),
  )
  const planned = fairness.filter(({ severity, when }) => severity === 'know' && when === 'before')
  const fine = fairness.filter(({ severity }) => severity === 'fine')
  return (
    <PartFold title="What the riders did" result={ridersSentence(first, plan)}>
      {first.length === 0 ? null : <Rows items={first} plan={plan} label="What rode along" />}
      <Folded items={planned} plan={plan} label="Known from the plan" />
      <Folded items={fine} plan={plan} label="Checked and fine" />
    </PartFold>
  )
}

interface RowsProps {
  items: readonly FairnessItem[]
  plan: Plan
  label: string
}

function Rows({ items, plan, label }: RowsProps) {
  return (
    <ul className={styles.list} aria-label={label}>
      {items.map((item) => (
        <RiderRow key={item.key} item={item} plan={plan} />
      ))}
    </ul>
  )
}

function Folded({ items, plan, label }: RowsProps) {
  if (items.length === 0) return null
  return (
    <SideNote label={`${label}: ${countText(items.length, 'item')}`}>
      <Rows items={items} plan={plan} label={label} />
    </SideNote>
  )
}
