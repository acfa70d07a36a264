import { SideNote } from '@/app/kit/page/side-note.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { usePlanActions } from '@/app/plan/page/plan-page-context.ts'
import { useLocked } from '@/app/plan/page/use-locked.ts'
import { applyRemedy } from '@/core/fairness/apply-remedy.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { offersOf } from '@/core/fairness/offers.ts'
import { accepting } from '@/core/plan-edits/parts/in-part.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { fairnessText, severityText } from '@/core/wording/fairness/fairness-text.ts'
import { remedyText } from '@/core/wording/fairness/remedy-text.ts'
import { remedyLockedText } from '@/core/wording/plan/locked-text.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import styles from './fairness-item-row.module.css'
import { FollowUpPress } from './follow-up-press.tsx'

interface Props {
  item: FairnessItem
  /** For the words only; a press acts on the plan as it stands by then. */
  plan: Plan
}

const marks = { fix: '◆', know: '○', fine: '–' } as const

/** One item of the fairness check: what and how much in a sentence, then what can be done about it. */
export function FairnessItemRow({ item, plan }: Props) {
  const { changeSaid, jumpTo } = usePlanActions()
  const { title, sentence, why } = fairnessText(item, plan)
  const locked = useLocked()
  const { presses, inFollowUp, advice } = offersOf(item.remedies, plan, locked)
  return (
    <li className={styles.item}>
      <span className={item.severity === 'fix' ? styles.warn : styles.mark} aria-hidden="true">
        {marks[item.severity]}
      </span>
      <div className={styles.words}>
        <p>
          <b>{title}</b> <span className={styles.soft}>{severityText(item)}</span>
        </p>
        <p>{boundUnits(sentence)}</p>
        <div className={styles.presses}>
          {presses.map((remedy) => (
            <Button
              key={JSON.stringify(remedy)}
              size="small"
              onPress={() =>
                changeSaid(`Done: ${remedyText(remedy, plan)}`, (now) => applyRemedy(now, remedy))
              }
            >
              {boundUnits(remedyText(remedy, plan))}
            </Button>
          ))}
          {item.severity === 'fix' ? (
            <Button
              size="small"
              kind="quiet"
              label={`Accept: ${title}`}
              onPress={() => changeSaid(`Accepted: ${title}`, (now) => accepting(now, item.key))}
            >
              Accept
            </Button>
          ) : null}
          {item.path !== '' && item.severity !== 'fine' ? (
            <Button
              size="small"
              kind="quiet"
              label={`Show where ${title} is set`}
              onPress={() => jumpTo(item.path)}
            >
              Show where
            </Button>
          ) : null}
        </div>
        {inFollowUp.length > 0 && item.severity !== 'fine' ? (
          <div className={styles.presses}>
            <span className={styles.soft}>{remedyLockedText}</span>
            {inFollowUp.map((remedy) => (
              <FollowUpPress key={JSON.stringify(remedy)} remedy={remedy} />
            ))}
          </div>
        ) : null}
        {item.severity === 'fine' ? null : (
          <SideNote label={advice.length > 0 ? 'Why, and what else helps' : 'Why'}>
            <p>{why}</p>
            {advice.length > 0 ? (
              <ul>
                {advice.map((remedy) => (
                  <li key={remedy.code}>{remedyText(remedy, plan)}</li>
                ))}
              </ul>
            ) : null}
          </SideNote>
        )}
      </div>
    </li>
  )
}
