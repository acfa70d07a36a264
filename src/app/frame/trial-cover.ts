import type { Session } from '@/core/session/session-record.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { sealedSessions } from '@/core/whole-trial/sealed.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

export interface TrialCover {
  /** The trial's question, or, covered, words that cannot name a level. */
  title: string
  covered: boolean
  /** Serving codes of what is covered, in rising order, which tells nothing. */
  codes: { id: string; code: string }[]
}

/** What the head of a trial may show: everything, or, while a tasting is sealed or about to be, codes alone. */
export function trialCover(whole: WholeTrial, placeName: string): TrialCover {
  const hidden = sessionsToHide(whole, placeName)
  const { question, levels } = planInForce(whole)
  if (hidden.length === 0) return { title: question, covered: false, codes: [] }
  return {
    title: maySay(question, levels) ? question : 'A trial under cover',
    covered: true,
    codes: hidden
      .flatMap((session) => session.dealt.servings)
      .map(({ id, code }) => ({ id, code }))
      .toSorted((a, b) => a.code.localeCompare(b.code)),
  }
}

/** Sealed sessions everywhere; in the Tasting place also the latest one before its first ballot. */
function sessionsToHide(whole: WholeTrial, placeName: string): Session[] {
  const sealed = sealedSessions(whole)
  const latest = whole.sessions.toSorted((a, b) => a.number - b.number).at(-1)
  const aboutToTaste =
    placeName === 'tasting' &&
    sealed.length === 0 &&
    latest !== undefined &&
    tastingState(whole, latest.id).seal === 'not-begun'
  return aboutToTaste ? [latest] : sealed
}

/** A question may stand over a covered rail when it holds no number and no option's name. */
function maySay(question: string, levels: readonly { label: string }[]): boolean {
  const words = question.toLowerCase()
  return !/\d/.test(words) && !levels.some(({ label }) => words.includes(label.toLowerCase()))
}
