import type { Session } from '@/core/session/session-record.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { questionNamesLevel } from '@/core/trial/question-names-level.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { sealedSessions } from '@/core/whole-trial/sealed.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

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

/** What a trial may show at a place: everything, or, while a tasting is sealed or about to be, codes alone. */
export function trialCover(whole: WholeTrial, placeName: string, uncovered: boolean): TrialCover {
  const { question, levels, factor } = planInForce(whole)
  const names = questionNamesLevel(question, levels)
  const tabTitle = names ? `A trial of ${factor.name}` : question
  const sealed = uncovered ? [] : sealedSessions(whole)
  const hidden = sealed.length > 0 ? sealed : uncovered ? [] : aboutToTaste(whole, placeName)
  if (hidden.length === 0)
    return { title: question, tabTitle, covered: false, codes: [], sealed: [] }
  return {
    title: names ? 'A trial under cover' : question,
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
function aboutToTaste(whole: WholeTrial, placeName: string): Session[] {
  const latest = whole.sessions.toSorted((a, b) => a.number - b.number).at(-1)
  return placeName === 'tasting' &&
    latest !== undefined &&
    tastingState(whole, latest.id).seal === 'not-begun'
    ? [latest]
    : []
}
