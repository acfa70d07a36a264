import type { Response } from '@/core/trial/response.ts'

/** What a difference in a response is counted in: points of its scale, or its own unit. */
export function responseUnit({ scale }: Pick<Response, 'scale'>): string {
  return scale.kind === 'measured' ? scale.unitOfMeasure : 'points'
}
