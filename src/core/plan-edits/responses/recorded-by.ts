import type { AnswerScale, Response } from '@/core/trial/response.ts'

/** The response recorded by another: by the baker of each batch, or by each taster of a serving, on a scale that a mouth can answer. */
export function recordedBy(response: Response, by: Response['by']): Response {
  if (by === 'baker') return { ...response, by, about: 'batch' }
  const { scale } = response
  const fits = scale.kind === 'measured' ? startedScale('nine-point') : scale
  return { ...response, by, about: 'serving', scale: fits }
}

/** A scale of a kind to start from, with words at its ends. */
export function startedScale(kind: AnswerScale['kind']): AnswerScale {
  if (kind === 'measured') return { kind, unitOfMeasure: '', measure: 'own' }
  if (kind === 'just-about-right') return { kind, low: 'much too little', high: 'much too much' }
  return {
    kind,
    anchors: [
      { at: 1, text: 'not at all' },
      { at: 9, text: 'extremely' },
    ],
  }
}
