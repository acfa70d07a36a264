import { trialCover } from '@/core/seal/trial-cover.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Watched } from './messages.ts'

/** What who watches is told: how many ballots are in, under words that name no level. */
export function watchedOf(whole: WholeTrial): Watched {
  const session = whole.sessions.toSorted((a, b) => a.number - b.number).at(-1)
  const tasters = session ? tastingState(whole, session.id).tasters : []
  return {
    title: trialCover(planInForce(whole), whole, 'tasting', false).title,
    ballots: {
      in: tasters.reduce((total, { answered }) => total + answered, 0),
      expected: tasters.reduce((total, { expected }) => total + expected, 0),
    },
  }
}
