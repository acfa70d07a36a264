import { bestInsideHolds } from '@/core/findings/best/best-inside.ts'
import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import { decisiveRung, type RungName } from '@/core/findings/rungs/decisive-rung.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { Expectation } from '@/core/trial/expectation.ts'

export interface Conclusion {
  /** The highest rung that answers, on which the rest stands; null when none does. */
  rung: RungName | null
  expectation: 'held' | 'not-held' | 'not-settled' | 'none'
  /** What to do next, the most pressing first. */
  next: ('mend' | 'adopt' | 'confirm' | 'narrow' | 'repeat')[]
}

/**
 * What follows from the main response: did the expectation hold, and what next. *Mend* first when fairness items are
 * left open (`toMend`). *Adopt* when the factor itself matters, or is too small to matter; *confirm* when a difference
 * is only known of these pieces or doughs, or its size is unsure; *narrow* when the best lies inside the levels tried;
 * *repeat* when nothing is settled or the margin is too fine for what was made.
 */
export function conclusionOf(
  document: FindingsDocument,
  scores: Pick<ScoreTable, 'expectation'>,
  circumstances: { toMend: number },
): Conclusion {
  const main = document.responses[0]
  const rung = main ? decisiveRung(main) : null
  const next: Conclusion['next'] = circumstances.toMend > 0 ? ['mend'] : []
  if (!main || !rung) {
    return {
      rung: null,
      expectation: scores.expectation ? 'not-settled' : 'none',
      next: [...next, 'repeat'],
    }
  }
  next.push(...stepsFrom(main, rung))
  return { rung, expectation: outcomeOf(main, rung, scores.expectation), next }
}

function stepsFrom(main: ResponseFindings, rung: RungName): Conclusion['next'] {
  const verdict = main.verdict[rung]
  const kind = isPresent(verdict) ? verdict.kind : 'not-settled'
  const tooFine = !isPresent(main.easiest) && main.easiest.reason === 'margin-too-fine'
  if (kind === 'leans' || kind === 'not-settled' || tooFine) return ['repeat']
  const settled = rung === 'factor' && kind !== 'differs'
  const found = main[rung]
  const inside = isPresent(found) && isPresent(found.best) && found.best.answer === 'inside'
  return [settled ? 'adopt' : 'confirm', ...(inside ? (['narrow'] as const) : [])]
}

function outcomeOf(
  main: ResponseFindings,
  rung: RungName,
  expectation: Expectation | null,
): Conclusion['expectation'] {
  if (!expectation) return 'none'
  const found = main[rung]
  const verdict = main.verdict[rung]
  if (!isPresent(found) || !isPresent(verdict)) return 'not-settled'
  if (expectation.direction === 'no-difference') {
    if (verdict.kind === 'too-small') return 'held'
    return verdict.kind === 'matters' || verdict.kind === 'differs' ? 'not-held' : 'not-settled'
  }
  if (expectation.direction === 'best-inside') {
    const values = found.means.flatMap(({ level }) => (typeof level === 'number' ? [level] : []))
    return isPresent(found.best) ? bestInsideHolds(found.best, values) : 'not-settled'
  }
  if (!isPresent(found.trend) || found.trend.p >= 0.05) return 'not-settled'
  return found.trend.slope > 0 === (expectation.direction === 'rises') ? 'held' : 'not-held'
}
