import type { Plan } from '@/core/trial/plan-record.ts'

const mostLetters = 200

/** The question of a trial that follows, with what it does to the one before: "Narrow: How wet should our focaccia be?" Said once. */
export function followingQuestion(
  how: 'Confirm' | 'Narrow' | 'Repeat' | 'Copy',
  { question }: Pick<Plan, 'question'>,
): string {
  const plain = question.replace(/^(Confirm|Narrow|Repeat|Copy): /, '')
  const next = `${how}: ${plain}`
  return next.length <= mostLetters ? next : `${next.slice(0, mostLetters - 1)}…`
}
