import type { Summary } from '@/notebook/summary-record.ts'

/** Where a trial stands and where its next work is. */
export const stageWords: Record<Summary['stage'], { words: string; place: string }> = {
  planning: { words: 'In planning', place: 'plan' },
  working: { words: 'At the bench', place: 'bench' },
  tasting: { words: 'Tasting, under cover', place: 'tasting' },
  sealed: { words: 'Under cover', place: 'tasting' },
  answered: { words: 'Answered', place: 'findings' },
}

/** Whether a trial's levels must not be shown: while its tasting runs or is sealed. */
export function isCovered({ stage }: Pick<Summary, 'stage'>): boolean {
  return stage === 'tasting' || stage === 'sealed'
}
