import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { ScoreResponse } from '@/core/findings/table/score-table.ts'

export type RungName = 'pieces' | 'doughs' | 'factor'

/** What every sentence about a finding needs to name things. */
export interface Naming extends Pick<FindingsDocument, 'factor' | 'unit' | 'levels'> {
  /** The scale of the response that is spoken of, where it is known. */
  scale?: ScoreResponse['scale']
}

/** The naming for one response of the findings: its scale keeps a sentence from claiming more than there is room for. */
export function namingOf(
  { factor, unit, levels }: Pick<Naming, 'factor' | 'unit' | 'levels'>,
  response: Pick<ScoreResponse, 'scale'> | undefined,
): Naming {
  return { factor, unit, levels, ...(response ? { scale: response.scale } : {}) }
}

/** The rung whose means, pairs and curve a screen shows first: the factor's where it answers, else the lower one. */
export function shownRung(found: ResponseFindings): RungName | null {
  if (isPresent(found.factor)) return 'factor'
  if (isPresent(found.doughs)) return 'doughs'
  return isPresent(found.pieces) ? 'pieces' : null
}
