import { LevelTab } from '@/app/kit/rail/level-tab.tsx'
import styles from './bench.module.css'
import { useBench } from './bench-context.ts'
import { unitName } from './line-name.ts'

interface LineMarkProps {
  unit: { kind: 'batch' | 'piece'; id: string }
  size?: 'small' | 'plain' | 'large'
  letterOnly?: boolean
}

/** A batch or piece by its tab; a dough that serves all levels, and every one while the codes are kept, by its bare letter. */
export function LineMark({ unit, size = 'plain', letterOnly = false }: LineMarkProps) {
  const { session, plan, covered } = useBench()
  const { letter, levelId } = unitName(session, plan, unit)
  if (levelId === null || covered) return <b className={styles.bareLetter}>{letter}</b>
  return (
    <LevelTab
      levels={plan.levels}
      levelId={levelId}
      letter={letter}
      size={size}
      letterOnly={letterOnly}
    />
  )
}
