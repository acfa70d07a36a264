import type { Response } from '@/core/trial/response.ts'
import { startedScale } from './started-scale.ts'

/** The response recorded by another: by the baker of each batch, or by each taster of a serving, on a scale that a mouth can answer. */
export function recordedBy(response: Response, by: Response['by']): Response {
  if (by === 'baker') return { ...response, by, about: 'batch' }
  const { scale } = response
  const fits = scale.kind === 'measured' ? startedScale('nine-point') : scale
  return { ...response, by, about: 'serving', scale: fits }
}
