import { memo } from 'react'
import { LevelTab } from '@/app/kit/rail/level-tab.tsx'
import { useLettersOfOne } from '@/app/plan/page/use-letters.ts'
import type { Level } from '@/core/trial/level.ts'

interface Props {
  levels: readonly Level[]
  levelId: string | null
}

const oneForAll = 'One dough for all'

/** The head of a batch's column: its level's tab, with its letter where there is one session alone; one dough for all has none. */
export const BatchHead = memo(function BatchHead({ levels, levelId }: Props) {
  const letters = useLettersOfOne()
  if (levelId === null) return <>{oneForAll}</>
  return <LevelTab levels={levels} levelId={levelId} letter={letters.get(levelId)} size="small" />
})
