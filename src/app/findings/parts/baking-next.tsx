import { LevelTab } from '@/app/kit/rail/level-tab.tsx'
import { axisLevels } from '@/core/figure/chart-of-response.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { bakeNext } from '@/core/wording/findings/bake-next.ts'
import type { Spoken } from '@/core/wording/findings/shown-sentence.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import styles from './baking-next.module.css'

interface BakingNextProps {
  spoken: Spoken
  scores: ScoreTable
}

/** What to bake next and why: the easiest level that is as good, else the usual, else all of them once more. */
export function BakingNext({ spoken, scores }: BakingNextProps) {
  const { title, levels, text } = bakeNext(spoken, scores)
  const all = axisLevels(scores.levels)
  return (
    <>
      <h2>{title}</h2>
      <div className={styles.line}>
        {levels.length > 0 ? (
          <span className={styles.tabs}>
            {levels.map((levelId) => (
              <LevelTab key={levelId} levels={all} levelId={levelId} />
            ))}
          </span>
        ) : null}
        <p>{boundUnits(text)}</p>
      </div>
    </>
  )
}
