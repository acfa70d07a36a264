import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { questionNamesLevel } from '@/core/trial/question-names-level.ts'
import { coveredTitle } from './covered-title.ts'
import type { SealRecords } from './seal-records.ts'
import { levelsUnknown, sealedSessions, sealOf } from './sealed.ts'

export interface TrialCover {
  /** The trial's question, or, covered, words that cannot name a level. */
  title: string
  /** What the tab and the browser's history keep: never a number or option of the levels, sealed or not, since it stays there. */
  tabTitle: string
  covered: boolean
  /** Serving codes of what is covered, in rising order, which tells nothing. */
  codes: { id: string; code: string }[]
  /** The sessions whose codes are kept: while there are any, every place but Tasting is covered. */
  sealed: Session[]
}

/**
 * What a trial may show at a place: everything, or, while a tasting is sealed or about to be, codes alone. `plan` is the one in
 * force, whose question stands over the place.
 */
export function trialCover(
  plan: Pick<Plan, 'question' | 'levels' | 'factor'>,
  records: Pick<SealRecords, 'sessions' | 'events' | 'ballots'>,
  placeName: string,
  uncovered: boolean,
): TrialCover {
  const { question, levels, factor } = plan
  const tabTitle = questionNamesLevel(question, levels) ? `A trial of ${factor.name}` : question
  const kept = sealedSessions(records)
  // Where cups were shuffled there is nothing to uncover: nobody knows which dough is which.
  const sealed = uncovered ? kept.filter((session) => levelsUnknown(session, records.events)) : kept
  const hidden = sealed.length > 0 ? sealed : uncovered ? [] : aboutToTaste(records, placeName)
  if (hidden.length === 0)
    return { title: question, tabTitle, covered: false, codes: [], sealed: [] }
  return {
    title: coveredTitle(question, levels),
    tabTitle,
    covered: true,
    codes: hidden
      .flatMap((session) => session.dealt.servings)
      .map(({ id, code }) => ({ id, code }))
      .toSorted((a, b) => a.code.localeCompare(b.code)),
    sealed,
  }
}

/** In the Tasting place the latest session is covered before its first ballot too. */
function aboutToTaste(
  records: Pick<SealRecords, 'sessions' | 'events' | 'ballots'>,
  placeName: string,
): Session[] {
  const latest = records.sessions.toSorted((a, b) => a.number - b.number).at(-1)
  return placeName === 'tasting' && latest && sealOf(records, latest.id) === 'not-begun'
    ? [latest]
    : []
}
