/** Another moment for the day's fixed end, or its fixed begin; by so many seconds. */
export interface MomentMend {
  mend: 'later-end' | 'earlier-end' | 'later-start' | 'earlier-start'
  seconds: number
}

/** One change that makes an impossible day possible, each alone. */
export type Mend =
  | MomentMend
  | { mend: 'one-more'; resource: string }
  | { mend: 'same-for-all'; step: string; seconds: number }
  | { mend: 'free-oven-order' }
  | { mend: 'wider-waits'; rung: number }

/** At most so many stand side by side. */
const mostShown = 3

/** Mends as they are shown: the three that do least harm, each of another kind. */
export function shownMends(mends: readonly Mend[]): Mend[] {
  return mends.slice(0, mostShown)
}

/** The other moment among mends; null where none of them is one. */
export function momentMend(mends: readonly Mend[]): MomentMend | null {
  return mends.find(isMoment) ?? null
}

const isMoment = (mend: Mend): mend is MomentMend =>
  mend.mend.endsWith('-end') || mend.mend.endsWith('-start')
