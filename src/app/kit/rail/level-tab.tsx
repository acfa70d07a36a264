import { levelLooks } from '@/app/kit/look/level-look.ts'
import type { Level } from '@/core/trial/level.ts'
import { levelShort } from '@/core/wording/words/level-text.ts'
import styles from './level-tab.module.css'

interface LevelTabProps {
  /** All levels of the trial: a level's colour is its place among them. */
  levels: readonly Level[]
  levelId: string
  letter?: string | undefined
  size?: 'small' | 'plain' | 'large'
  /** Only the letter, where the level is said elsewhere. */
  letterOnly?: boolean
}

/** A level's tab as a mark in text, table heads and lists: the same shape and colour as on the rail. */
export function LevelTab({ levels, levelId, letter, size = 'plain', letterOnly }: LevelTabProps) {
  const level = levels.find((candidate) => candidate.id === levelId)
  const look = levelLooks(levels).get(levelId)
  if (!level || !look) throw new Error(`no level ${levelId} among the levels of this tab`)
  return (
    <span
      className={`${styles.tab} ${styles[size]} ${look.pattern ? styles[look.pattern] : styles.strokes}`}
      style={look.style}
    >
      <span className={styles.words}>
        {letter ? <b>{letter}</b> : null}
        {letterOnly ? null : (
          <span className={level.value === null ? styles.option : undefined}>
            {levelShort(level)}
          </span>
        )}
      </span>
    </span>
  )
}
