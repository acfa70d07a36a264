import type { Departure } from '@/core/session/departure.ts'
import type { Unit } from '@/core/session/line.ts'
import type { Match, Matchable } from '@/core/session/matching/match.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { stepName } from '@/core/wording/words/named-in-plan.ts'
import { unitLetter } from '@/core/wording/words/unit-name.ts'

const lettersOf = (session: Session, units: readonly Unit[]) =>
  listText(units.map((unit) => unitLetter(session, unit).letter))

/**
 * What a departure does to the comparison: which others had the same, which cannot have it any more, and what then rides along. A
 * departure that cannot be matched (`match` null) says what it moves.
 */
export function departureEffectText(
  departure: Departure,
  match: Match | null,
  session: Session,
): string {
  if (match === null) return unmatched(departure)
  const { had, can, past } = match
  if (can.length === 0 && past.length === 0)
    return had.length === 0
      ? 'There is no other to compare it with.'
      : 'All the others had the same: the comparison holds.'
  const parts = [
    had.length > 0 ? `${lettersOf(session, had)} had the same.` : '',
    past.length > 0 ? `${lettersOf(session, past)} cannot any more: ${ridesAlong(departure)}` : '',
    can.length > 0 ? `${lettersOf(session, can)} still can.` : '',
  ]
  return parts.filter(Boolean).join(' ')
}

function ridesAlong(departure: Departure): string {
  switch (departure.what) {
    case 'wait':
      return departure.doneSeconds > departure.plannedSeconds
        ? `beside them it is ${durationText(departure.doneSeconds - departure.plannedSeconds)} riper, and the findings say so.`
        : `beside them it is ${durationText(departure.plannedSeconds - departure.doneSeconds)} less ripe, and the findings say so.`
    case 'step-extra':
      return 'beside them it was worked more, and the findings say so.'
    default:
      return 'beside them it was worked less, and the findings say so.'
  }
}

function unmatched(departure: Departure): string {
  switch (departure.what) {
    case 'weight':
      return 'Its level is taken as it was weighed.'
    case 'dough-order':
      return 'Their ages at the oven differ by it; a next session can go the other way round.'
    default:
      return 'Oven and freshness differ by it; a next session can go the other way round.'
  }
}

/** The press by which the others get the same: "Give C and D the same extra Fold", "Let C and D wait 12 min longer too". */
export function matchText(
  departure: Matchable,
  { can }: Match,
  plan: Plan,
  session: Session,
): string {
  const letters = lettersOf(session, can)
  const name = stepName(plan, departure.stepId)
  switch (departure.what) {
    case 'step-extra':
      return `Give ${letters} the same extra ${name}`
    case 'step-missing':
      return `Leave ${name} out for ${letters} too`
    case 'wait': {
      const more = departure.doneSeconds - departure.plannedSeconds
      return `Give ${letters} the same ${durationText(Math.abs(more))} ${more > 0 ? 'more' : 'less'}`
    }
  }
}
