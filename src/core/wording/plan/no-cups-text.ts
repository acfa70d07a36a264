import type { CupSheet } from '@/core/weighing/cup-sheet.ts'

const texts: Record<Extract<CupSheet, { ok: false }>['reason'], string> = {
  'one-dough':
    'One dough serves all levels here, so weighing it tells nothing and no cups are needed.',
  'nothing-differs':
    'The doughs are weighed alike, so weighing tells nothing and no cups are needed.',
  'more-differs':
    'The doughs differ in more than one weight, so cups cannot hide the level. Hold the flour instead of the dough or the piece, and one weight alone differs.',
}

/** Why doughs cannot be, or need not be, weighed from lidded cups. */
export function noCupsText(reason: Extract<CupSheet, { ok: false }>['reason']): string {
  return texts[reason]
}
