import type { ScoreResponse } from '@/core/findings/table/score-table.ts'
import { plainNumber } from '@/core/units/number-text.ts'

const scales: Readonly<Record<ScoreResponse['scale'], string>> = {
  'nine-point': ', 1 to 9',
  'just-about-right': ', 1 too little to 5 too much',
  measured: '',
}

/** What a chart of a response shows: "Liking, 1 to 9". */
export function chartTitle(
  name: string,
  response: Pick<ScoreResponse, 'scale'> | undefined,
): string {
  return `${name}${response ? scales[response.scale] : ''}`
}

/** The words at the margin's bracket; null without one. */
export function marginLabel(response: Pick<ScoreResponse, 'margin'> | undefined): string | null {
  return response?.margin == null ? null : `your margin, ${plainNumber(response.margin)}`
}
