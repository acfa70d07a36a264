import { cellsOf } from '@/core/findings/rungs/cells.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import {
  type ScatterSums,
  scatterSums,
} from '@/core/statistics/variance-components/scatter-sums.ts'
import { stageOf } from '@/core/whole-trial/stage.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** How the scores of one trial scatter, and whose they are. */
export interface TrialScatter {
  ok: true
  trialId: string
  /** The response that was taken. */
  response: string
  tasterIds: string[]
  scores: number
  sums: ScatterSums
}

export type NoScatter = { ok: false; reason: 'still-sealed' | 'not-finished' | 'no-scores' }

/**
 * The scatter of a trial whose planned sessions are all done and whose codes are open: of the main response where tasters
 * gave it on a nine-point scale, else of the first response that they did.
 */
export function scatterOfTrial(whole: WholeTrial): TrialScatter | NoScatter {
  const scored = scoresOfTrial(whole, { unsealed: false })
  if (!scored.ok) return scored
  if (stageOf(whole) !== 'answered') return { ok: false, reason: 'not-finished' }
  const { scores } = scored
  for (const [index, response] of scores.responses.entries()) {
    if (response.scale !== 'nine-point') continue
    const cells = cellsOf(scores, index)
    if (cells.tasters.length === 0) continue
    return {
      ok: true,
      trialId: whole.trial.id,
      response: response.name,
      tasterIds: cells.tasters,
      scores: cells.y.length,
      sums: scatterSums({
        y: [...cells.y],
        taster: [...cells.taster],
        level: [...cells.level],
        flight: [...cells.flight],
        batch: [...cells.batch],
        piece: [...cells.piece],
      }),
    }
  }
  return { ok: false, reason: 'no-scores' }
}
