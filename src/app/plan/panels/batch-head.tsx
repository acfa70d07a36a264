import { memo } from 'react'
import { digitsOf } from '@/app/kit/ledger/use-steady-columns.ts'
import { LevelTab } from '@/app/kit/rail/level-tab.tsx'
import { useLetters } from '@/app/plan/page/use-letters.ts'
import type { Level } from '@/core/trial/level.ts'
import { levelShort } from '@/core/wording/words/level-text.ts'

interface Props {
  levels: readonly Level[]
  levelId: string | null
}

/** How many digits of a figure the head takes: its label is set smaller, with a letter before it and the edges of its tab. */
export function headLength(levels: readonly Level[], levelId: string | null): number {
  const level = levels.find(({ id }) => id === levelId)
  const label = level ? levelShort(level) : oneForAll
  return 0.78 * digitsOf(label) + 2.6
}

const oneForAll = 'One dough for all'

/** The head of a batch's column: its level's tab, with its letter once a session is dealt; one dough for all has none. */
export const BatchHead = memo(function BatchHead({ levels, levelId }: Props) {
  const letters = useLetters()
  if (levelId === null) return <>{oneForAll}</>
  return <LevelTab levels={levels} levelId={levelId} letter={letters.get(levelId)} size="small" />
})
