import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { SideNote } from '@/app/kit/page/side-note.tsx'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { fairnessPerLevel } from '@/core/wording/fairness/fairness-per-level.ts'
import { fairnessText, severityText } from '@/core/wording/fairness/fairness-text.ts'
import { remedyText } from '@/core/wording/fairness/remedy-text.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import styles from './riders-part.module.css'

const marks = { fix: '◆', know: '○', fine: '–' } as const

/** One rider as it came out: what and how much; why it matters, each level's figure and the mend one press deeper. */
export function RiderRow({ item, plan }: { item: FairnessItem; plan: Plan }) {
  const { title, sentence, why } = fairnessText(item, plan)
  const levels = fairnessPerLevel(item, plan)
  return (
    <li className={styles.item}>
      <span className={item.severity === 'fix' ? styles.warn : styles.mark} aria-hidden="true">
        {marks[item.severity]}
      </span>
      <div className={styles.words}>
        <p>
          <b>{title}</b>{' '}
          <span className={styles.soft}>
            {item.accepted ? 'Accepted' : severityText({ ...item, when: 'after' })}
          </span>
        </p>
        <p>{boundUnits(sentence)}</p>
        {item.severity === 'fine' ? null : (
          <SideNote label="Why, and what helps next time">
            <p>{boundUnits(why)}</p>
            {levels ? (
              <LedgerTable
                caption={`${title}, level by level`}
                hideCaption
                rowHead="Level"
                columns={[{ key: 'what', head: levels.what }]}
                rows={levels.rows.map(({ levelId, level, text }) => ({
                  key: levelId,
                  levelIds: [levelId],
                  head: level,
                  cells: [text],
                }))}
              />
            ) : null}
            {item.remedies.length > 0 ? (
              <ul>
                {item.remedies.map((remedy) => (
                  <li key={JSON.stringify(remedy)}>{boundUnits(remedyText(remedy, plan))}</li>
                ))}
              </ul>
            ) : null}
          </SideNote>
        )}
      </div>
    </li>
  )
}
