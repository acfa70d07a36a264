import type { MovedOn } from '@/core/session/press/moved-on.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'
import { unitLetter } from '@/core/wording/words/unit-name.ts'
import { eventText } from './event-text.ts'

/** Why a press was not taken: what the log says already, of which dough and since when. */
export function movedOnText({ why, by }: MovedOn, plan: Plan, session: Session): string {
  const nothing = 'Nothing was logged by this press.'
  if (why === 'taken-back' || by === null)
    return `That entry was taken back or corrected meanwhile, perhaps in another window. ${nothing}`
  const { kind, id } = by.about
  const { letter } =
    kind === 'batch' || kind === 'piece' ? unitLetter(session, { kind, id }) : { letter: '' }
  const said = [letter, eventText(by, plan)].filter(Boolean).join(': ')
  const since = `“${said}” was logged at ${clockTime(by.at, session.zone)}, perhaps in another window`
  return why === 'changed'
    ? `${since}, after you looked. ${nothing} Look at what stands here now.`
    : `${since}. ${nothing}`
}
