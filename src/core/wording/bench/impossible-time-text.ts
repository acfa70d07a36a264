import type { ImpossibleTime } from '@/core/session/press/impossible-time.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'

/** Why a time cannot be, and what to write in its place. */
export function impossibleTimeText(found: ImpossibleTime, zone: string): string {
  switch (found.why) {
    case 'in-the-future':
      return 'That is still to come. Write when it happened.'
    case 'before-the-session':
      return 'The session had not begun then. Write a time after its doughs were dealt.'
    case 'ends-before-it-begins':
      return `It began at ${clockTime(found.beganAt, zone)}. Write a time after that, or correct the beginning first.`
    case 'begins-after-it-ends':
      return `It ended at ${clockTime(found.endedAt, zone)}. Write a time before that, or correct the end first.`
    case 'before-hands-off':
      return `Hands off was at ${clockTime(found.handsOffAt, zone)}. Write a time after that, or correct that first.`
    case 'after-hands-off':
      return `Hands off was at ${clockTime(found.handsOffAt, zone)}. Write a time before that, or correct that first.`
  }
}

/** That the clock skipped a typed time of day, as where summer time begins. */
export const neverShownText = 'The clock never showed that within a day of the entry.'
