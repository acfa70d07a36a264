import type { DayMissing } from '@/core/session/day-missing.ts'
import type { Unit } from '@/core/session/line.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Response } from '@/core/trial/response.ts'
import { countText, listText } from '@/core/wording/words/list-text.ts'
import { unitLetter } from '@/core/wording/words/unit-name.ts'

/** A dough or piece by its letter and which one it is. */
function named(session: Session, unit: Unit): string {
  const { letter, which } = unitLetter(session, unit)
  return which === '' ? letter : `${letter} (${which})`
}

/** Pieces that the log never had in the oven, by their letters. */
export function neverBakedText(pieceIds: readonly string[], session: Session): string {
  const names = pieceIds.map((id) => named(session, { kind: 'piece', id }))
  return `By the log never in the oven: ${listText(names)}.`
}

/** An answer of the baker that is missing, with the doughs or pieces it lacks: "Stickiness of B and D". */
export function missingAnswerText(
  { name }: Response,
  units: readonly Unit[],
  session: Session,
): string {
  return `${name} of ${listText(units.map((unit) => named(session, unit)))}`
}

/** What is missing of the day where letters must not be named: at the table. */
export function missingAtTableText({ neverBaked, answers }: DayMissing): string {
  const parts = [
    neverBaked.length > 0
      ? `${countText(neverBaked.length, 'piece')} that the log never had in the oven`
      : '',
    ...answers.map(
      ({ response, units }) =>
        `${response.name} of ${countText(units.length, response.about === 'batch' ? 'dough' : 'piece')}`,
    ),
  ].filter(Boolean)
  return `Still missing of the baking day: ${listText(parts)}.`
}

/** Before the first ballot: codes whose pieces the log never had in the oven; where the baker tastes blind, how many alone. */
export function unbakedCodesText(codes: readonly string[], bakerIsBlind: boolean): string {
  if (bakerIsBlind)
    return `By the log ${countText(codes.length, 'piece')} ${codes.length === 1 ? 'was' : 'were'} never in the oven. Nobody should wait for what does not come.`
  return `By the log ${codes.length === 1 ? 'a piece was' : 'some pieces were'} never in the oven: ${listText(codes.toSorted())}. Nobody should wait for what does not come.`
}
