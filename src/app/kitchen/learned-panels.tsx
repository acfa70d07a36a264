import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Panel } from '@/core/learned/learned-spread.ts'
import { panelText } from '@/core/wording/findings/learned-text.ts'
import { countText, listText } from '@/core/wording/words/list-text.ts'
import styles from './kitchen.module.css'
import { LearnedTrials } from './learned-trials.tsx'
import { thingWords } from './thing-words.ts'

/** How the tasters' scores scatter, one sentence a panel, and which trials say so. */
export function LearnedPanels({
  panels,
  kitchen,
  questions,
}: {
  panels: readonly Panel[]
  kitchen: readonly KitchenThing[]
  questions: ReadonlyMap<string, string>
}) {
  const nameOf = (id: string) => {
    const taster = kitchen.find((thing) => thing.id === id)
    return taster ? thingWords(taster).title : 'a taster no longer kept'
  }
  return panels.map((panel) => {
    const names = listText(panel.tasterIds.map(nameOf))
    return (
      <div key={panel.trialIds.join(' ')} className={styles.learned}>
        <p>
          <b>{names}. </b>
          {panelText(panel)}
        </p>
        <LearnedTrials
          trialIds={panel.trialIds}
          questions={questions}
          about={countText(panel.trialIds.length, 'trial')}
        />
      </div>
    )
  })
}
