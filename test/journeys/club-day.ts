import type { NewEvent } from '@/core/session/press/new-event.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { madeStep } from '../core/made-plan.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { tastingTrial } from './tasting-trial.ts'

/** Three of a bake club, by codes. */
export const club = ['AN', 'BO', 'CY'] as const

const quick = { handsSeconds: 1, earlySeconds: 3600, lateSeconds: 3600 }

/** A short day of a bake club: two flatbreads, mixed and baked, two codes for each of three; all data invented. */
export function clubDay(): WholeTrial {
  const { formula, responses } = planOf()
  const { levels } = tastingTrial().plans[0] ?? { levels: [] }
  return tastingTrial({
    levels: levels.slice(0, 2),
    tasters: club.map((_, at) => ({ tasterId: `club-${at + 1}`, knows: false })),
    formula: { ...formula, preferments: [] },
    sharedDoses: [],
    plannedSessions: 1,
    placesPerLoad: 1,
    responses: responses.filter(({ by }) => by === 'taster'),
    steps: [
      madeStep('mix', 'mix', { name: 'Mix', ...quick }),
      madeStep('bake', 'bake', {
        ...{ name: 'Bake', per: 'piece', uses: ['oven'], waitSeconds: 1, ...quick },
      }),
    ],
  })
}

/** How much somebody likes a code, on nine points: something that differs by both. */
export const likes = (code: string, taster: number): number => ((Number(code) + taster) % 9) + 1

/** An entry of the day as it is known before: what, of what, and whose step. */
export type Scripted = Pick<NewEvent, 'kind' | 'about'> & { stepId: string }

/** What the bench and the oven are to write of a dough and of its piece, in their order. */
export function scriptOf({ sessions }: WholeTrial, letter: string) {
  const [session] = sessions
  const batch = session?.batches.find((each) => each.letter === letter)
  const piece = session?.pieces.find(({ batchId }) => batchId === batch?.id)
  if (!batch || !piece) throw new Error(`a dough ${letter} and its piece`)
  const said = (kind: string, about: { kind: string; id: string }, stepId: string) =>
    ({ kind, about, stepId }) as Scripted
  const dough = { kind: 'batch', id: batch.id }
  const ofPiece = { kind: 'piece', id: piece.id }
  return {
    mix: [said('step-started', dough, 'mix'), said('step-stopped', dough, 'mix')],
    bake: [said('bake-in', ofPiece, 'bake'), said('bake-out', ofPiece, 'bake')],
  }
}
