import type { FittedPoint } from '@/core/figure/chart-of-response.ts'
import { curveBand } from '@/core/findings/best/curve-band.ts'
import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { shownRung } from '@/core/wording/findings/answer-of-rung.ts'

const curvePoints = 41

/** The curve with its band for every response at the rung that is shown, in their order; null where none can be fitted. */
export function curvesOf(scores: ScoreTable, findings: FindingsDocument): (FittedPoint[] | null)[] {
  return findings.responses.map((found, index) => {
    const rung = shownRung(found)
    const answer = rung === null ? null : found[rung]
    if (rung === null || answer === null || !isPresent(answer) || !isPresent(answer.best))
      return null
    const band = curveBand(scores, index, rung, curvePoints)
    return isPresent(band)
      ? band.map(({ level, estimate, low, high }) => ({ at: level, fit: estimate, low, high }))
      : null
  })
}
