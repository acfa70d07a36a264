import type { FieldTrouble } from '@/core/house/edited-house.ts'
import { betweenText } from '@/core/wording/words/field-check-text.ts'
import { typedNumberText } from '@/core/wording/words/typed-number-text.ts'

/** What keeps a field of a house formula from standing, and the mend. */
export function editedTroubleText(trouble: FieldTrouble): string {
  switch (trouble.is) {
    case 'unread':
      return typedNumberText(trouble.text, trouble.why)
    case 'missing':
      return 'Write a number, 0 for none.'
    case 'outside':
      return betweenText(trouble.least, trouble.most, trouble.unit)
  }
}
