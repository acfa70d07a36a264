import { LevelTab } from '@/app/kit/level-tab.tsx'
import styles from './bench.module.css'
import { useBench } from './bench-context.ts'
import { unitName } from './line-name.ts'

interface LineMarkProps {
  unit: { kind: 'batch' | 'piece'; id: string }
  size?: 'small' | 'plain' | 'large'
}

/** A batch or piece by its tab; a dough that serves all levels by its bare letter. */
export function LineMark({ unit, size = 'plain' }: LineMarkProps) {
  const { session, plan } = useBench()
  const name = unitName(session, plan, unit)
  if (name.levelId === null) return <b className={styles.commonDough}>{name.letter}</b>
  return <LevelTab levels={plan.levels} levelId={name.levelId} letter={name.letter} size={size} />
}
