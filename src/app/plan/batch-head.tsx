import { memo } from 'react'
import { LevelTab } from '@/app/kit/level-tab.tsx'
import type { Level } from '@/core/trial/level.ts'
import { levelShort } from '@/core/wording/level-text.ts'
import { useLetters } from './use-letters.ts'

interface Props {
  levels: readonly Level[]
  levelId: string | null
}

/** How many digits of a figure the head takes: its label and letter are set smaller, in a tab with edges. */
export function headLength(levels: readonly Level[], levelId: string | null): number {
  const level = levels.find(({ id }) => id === levelId)
  const label = level ? levelShort(level) : oneForAll
  return Math.ceil(0.8 * (label.length + 2)) + 1
}

const oneForAll = 'One dough for all'

/** The head of a batch's column: its level's tab, with its letter once a session is dealt; one dough for all has none. */
export const BatchHead = memo(function BatchHead({ levels, levelId }: Props) {
  const letters = useLetters()
  if (levelId === null) return <>{oneForAll}</>
  return <LevelTab levels={levels} levelId={levelId} letter={letters.get(levelId)} size="small" />
})
