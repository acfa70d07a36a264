import type { Answer } from '@/core/seal/blind/answer.ts'
import type { Question } from '@/core/seal/blind/blind-view.ts'

type Asked = Pick<Question, 'responseId'>

/** What a ballot says of a question that its taster left out by one press, without a word of their own. */
const noWord = 'no reason given'

/** The draft's field of a question's value, and of the reason why it has none. */
export const valueField = (question: Asked) => `value/${question.responseId}`
export const whyField = (question: Asked) => `why/${question.responseId}`
export const skippedField = (question: Asked) => `skip/${question.responseId}`

/** The draft's field of what a taster says in words of their own. */
export const wordsField = 'words'

/** The draft that a sealed ballot is mended from: its answers, and when its taster first had the code. */
export function draftOf(
  answers: readonly Answer[],
  startedAt: number | null,
  words: string | null = null,
): Readonly<Record<string, string>> {
  const fields = answers.map(({ responseId, value, why }): Record<string, string> => {
    const question = { responseId }
    return value === null
      ? {
          [skippedField(question)]: 'yes',
          [whyField(question)]: why === undefined || why === noWord ? '' : why,
        }
      : { [valueField(question)]: String(value) }
  })
  return Object.assign(
    startedAt === null ? {} : { startedAt: String(startedAt) },
    words === null ? {} : { [wordsField]: words },
    ...fields,
  )
}

/** The answers a ballot would have from what was pressed and typed so far. */
export function draftAnswers(
  questions: readonly Question[],
  values: Readonly<Record<string, string>>,
): Answer[] {
  return questions.flatMap((question): Answer[] => {
    const { responseId } = question
    if (values[skippedField(question)] === 'yes') {
      return [{ responseId, value: null, why: values[whyField(question)]?.trim() || noWord }]
    }
    const text = values[valueField(question)] ?? ''
    return text === '' ? [] : [{ responseId, value: Number(text.replace(',', '.')) }]
  })
}
