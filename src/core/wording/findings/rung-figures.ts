import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import { decimalText, plainNumber, probabilityText } from '@/core/units/number-text.ts'
import { differenceDecimals } from './difference-text.ts'
import { rungTitle } from './rung-text.ts'

/** The test of every rung that answers: "These pieces: F 4.31 with 4 and 28 degrees of freedom, p 0.008; residual SD 0.71." */
export function rungFigures(
  found: Pick<ResponseFindings, 'pieces' | 'doughs' | 'factor'>,
): string[] {
  return (['pieces', 'doughs', 'factor'] as const).flatMap((name) => {
    const rung = found[name]
    if (!isPresent(rung)) return []
    const { f, df1, df2, p, residualSd } = rung
    const spread = decimalText(residualSd, differenceDecimals(residualSd) + 1)
    return [
      `${rungTitle(name)}: F ${decimalText(f, 2)} with ${plainNumber(df1)} and ${plainNumber(df2)} degrees of freedom, p ${probabilityText(p)}; residual SD ${spread}.`,
    ]
  })
}
