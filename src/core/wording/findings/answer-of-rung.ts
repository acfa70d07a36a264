import type { FactorFacts } from '@/core/findings/findings-document.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings, Verdict } from '@/core/findings/response-findings-shape.ts'
import type { ScoreResponse } from '@/core/findings/table/score-table.ts'

export type RungName = 'pieces' | 'doughs' | 'factor'

/** What every sentence about a finding needs to name things. */
export interface Naming {
  factor: FactorFacts
  unit: 'batch' | 'piece'
  /** The scale of the response that is spoken of, where it is known. */
  scale?: ScoreResponse['scale']
}

/** The naming for one response of the findings: its scale keeps a sentence from claiming more than there is room for. */
export function namingOf(
  { factor, unit }: Pick<Naming, 'factor' | 'unit'>,
  response: Pick<ScoreResponse, 'scale'> | undefined,
): Naming {
  return { factor, unit, ...(response ? { scale: response.scale } : {}) }
}

/**
 * The lower rung that speaks in the first half of the answer: the doughs where one session had several flights, else
 * the pieces; null when neither can answer (a measurement without tasters), so that the factor speaks alone.
 */
export function lowerRung(found: ResponseFindings): 'pieces' | 'doughs' | null {
  if (isPresent(found.verdict.doughs)) return 'doughs'
  return isPresent(found.verdict.pieces) ? 'pieces' : null
}

/** The rung whose means, pairs and curve a screen shows first: the factor's where it answers, else the lower one. */
export function shownRung(found: ResponseFindings): RungName | null {
  if (isPresent(found.factor)) return 'factor'
  if (isPresent(found.doughs)) return 'doughs'
  return isPresent(found.pieces) ? 'pieces' : null
}

/** True when two verdicts point the same way: the same level of the pair stands higher in both. */
export function sameWay(one: Verdict, other: Verdict): boolean {
  const [a, b] = one.between
  const [c, d] = other.between
  if (a === c && b === d) return Math.sign(one.difference) === Math.sign(other.difference)
  const up = (verdict: Verdict) =>
    verdict.difference >= 0 ? verdict.between[1] : verdict.between[0]
  return up(one) === up(other)
}
