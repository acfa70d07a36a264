import type { AnswerScale } from '@/core/trial/response.ts'
import type { Answer } from './answer.ts'
import type { Question } from './blind-view.ts'

export interface AnswerTrouble {
  responseId: string
  reason: 'missing' | 'needs-why' | 'out-of-range' | 'not-whole' | 'unknown-response' | 'twice'
  /** The range, where the value lies outside it. */
  least?: number
  most?: number
}

/** The points of an answer scale; null for a measured number, which has none. */
export function pointsOf(scale: AnswerScale): { least: number; most: number } | null {
  switch (scale.kind) {
    case 'nine-point':
      return { least: 1, most: 9 }
    case 'just-about-right':
      return { least: 1, most: 5 }
    default:
      return null
  }
}

/**
 * Checks a ballot against what is asked: one answer to each question, a whole point of its scale (a measured answer may be any
 * number), or no value but a reason why. Answers all troubles at once, in the order of the questions.
 */
export function checkAnswers(
  answers: readonly Answer[],
  questions: readonly Pick<Question, 'responseId' | 'scale'>[],
): { ok: true } | { ok: false; troubles: AnswerTrouble[] } {
  const asked = questions.flatMap(({ responseId, scale }) => {
    const own = answers.filter((answer) => answer.responseId === responseId)
    const [first] = own
    if (!first) return { responseId, reason: 'missing' as const }
    if (own.length > 1) return { responseId, reason: 'twice' as const }
    return troubleOf(first, scale)
  })
  const known = new Set(questions.map(({ responseId }) => responseId))
  const unknown = answers
    .filter((answer) => !known.has(answer.responseId))
    .map((answer) => ({ responseId: answer.responseId, reason: 'unknown-response' as const }))
  const troubles = [...asked, ...unknown]
  return troubles.length === 0 ? { ok: true } : { ok: false, troubles }
}

function troubleOf({ responseId, value, why }: Answer, scale: AnswerScale): AnswerTrouble[] {
  if (value === null) return why?.trim() ? [] : [{ responseId, reason: 'needs-why' }]
  const points = pointsOf(scale)
  if (!Number.isFinite(value)) return [{ responseId, reason: 'out-of-range' }]
  if (!points) return []
  if (value < points.least || value > points.most)
    return [{ responseId, reason: 'out-of-range', ...points }]
  return Number.isInteger(value) ? [] : [{ responseId, reason: 'not-whole', ...points }]
}

/** True when every question has a value or a why: then the ballot is complete. */
export function isAnswered(answers: readonly Answer[], responseIds: readonly string[]): boolean {
  return responseIds.every((responseId) => {
    const answer = answers.find((one) => one.responseId === responseId)
    return answer !== undefined && (answer.value !== null || Boolean(answer.why?.trim()))
  })
}
