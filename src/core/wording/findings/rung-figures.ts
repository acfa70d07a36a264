import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { Rung } from '@/core/findings/rungs/rung-shape.ts'
import { decimalText, plainNumber, probabilityText } from '@/core/units/number-text.ts'
import { differenceDecimals } from './difference-text.ts'
import { type LevelNaming, levelInWords } from './named-in-findings.ts'
import { rungTitle } from './rung-text.ts'

/** The test of every rung that answers: "These pieces: F 4.31 with 4 and 28 degrees of freedom, p 0.008; residual SD 0.71." */
export function rungFigures(
  found: Pick<ResponseFindings, 'pieces' | 'doughs' | 'factor'>,
  naming: LevelNaming,
): string[] {
  return (['pieces', 'doughs', 'factor'] as const).flatMap((name) => {
    const rung = found[name]
    if (!isPresent(rung)) return []
    const { f, df1, df2, p, residualSd } = rung
    const spread = decimalText(residualSd, differenceDecimals(residualSd) + 1)
    return [
      `${rungTitle(name)}: F ${decimalText(f, 2)} with ${plainNumber(df1)} and ${plainNumber(df2)} degrees of freedom, p ${probabilityText(p)}; residual SD ${spread}.`,
      ...unequalText(rung, naming),
    ]
  })
}

/** That levels scatter unequally, and what the pairs are judged by then; nothing where they scatter alike. */
function unequalText({ unequalSpread }: Rung, naming: LevelNaming): string[] {
  if (!unequalSpread) return []
  const { p, widest, calmest, pairs } = unequalSpread
  const scatter = `Scores scatter more at ${levelInWords(widest, naming)} than at ${levelInWords(calmest, naming)} (p ${probabilityText(p)})`
  return pairs === 'own-error'
    ? [`${scatter}, so each pair is judged by its own error.`]
    : [
        `${scatter}, yet all pairs share one error: those with ${levelInWords(widest, naming)} are less sure than they look, those without surer.`,
      ]
}
