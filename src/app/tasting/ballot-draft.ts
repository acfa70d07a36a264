import type { Answer } from '@/core/tasting/ballot-record.ts'
import type { BlindView } from '@/core/tasting/blind-view.ts'

export type Question = BlindView['questions'][number]

/** The draft's field of a question's value, and of the reason why it has none. */
export const valueField = (question: Question) => `value/${question.responseId}`
export const whyField = (question: Question) => `why/${question.responseId}`
export const skippedField = (question: Question) => `skip/${question.responseId}`

/** The answers a ballot would have from what was pressed and typed so far. */
export function draftAnswers(
  questions: readonly Question[],
  values: Readonly<Record<string, string>>,
): Answer[] {
  return questions.flatMap((question): Answer[] => {
    const { responseId } = question
    if (values[skippedField(question)] === 'yes') {
      return [{ responseId, value: null, why: values[whyField(question)] ?? '' }]
    }
    const text = values[valueField(question)] ?? ''
    return text === '' ? [] : [{ responseId, value: Number(text.replace(',', '.')) }]
  })
}
