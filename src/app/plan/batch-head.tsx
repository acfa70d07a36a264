import { memo } from 'react'
import { LevelTab } from '@/app/kit/level-tab.tsx'
import type { Level } from '@/core/trial/level.ts'
import { useLetters } from './use-letters.ts'

interface Props {
  levels: readonly Level[]
  levelId: string | null
}

/** The head of a batch's column: its level's tab, with its letter once a session is dealt; one dough for all has none. */
export const BatchHead = memo(function BatchHead({ levels, levelId }: Props) {
  const letters = useLetters()
  if (levelId === null) return <>One dough for all</>
  return <LevelTab levels={levels} levelId={levelId} letter={letters.get(levelId)} size="small" />
})
