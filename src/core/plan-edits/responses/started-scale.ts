import type { AnswerScale } from '@/core/trial/response.ts'

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
