import type { FactorKind } from '@/core/trial/factor.ts'

/** What stands before and after the name of the bread. */
const questions: Record<FactorKind, readonly [string, string]> = {
  hydration: ['How wet should our ', ' be?'],
  salt: ['How much salt does our ', ' need?'],
  yeast: ['How much yeast does our ', ' need?'],
  'preferment-share': ['How much preferment does our ', ' need?'],
  'flour-share': ['How much of another flour does our ', ' take?'],
  ingredient: ['How much oil, milk or malt does our ', ' need?'],
  'rest-time': ['How long should the dough of our ', ' rest?'],
  'proof-time': ['How long should our ', ' proof?'],
  'cold-hours': ['How many cold hours does our ', ' need?'],
  'fold-count': ['How many folds does our ', ' need?'],
  'bake-temperature': ['How hot should our ', ' bake?'],
  'bake-time': ['How long should our ', ' bake?'],
  'piece-mass': ['How heavy should our ', ' be?'],
  choice: ['Which makes the better ', '?'],
  own: ['What makes our ', ' better?'],
}

/** The question that a trial of a kind of factor opens with; the bread's name is put in as it is: “flatbread”. */
export function usualQuestion(kind: FactorKind, bread: string): string {
  return questions[kind].join(bread)
}

/** The question for another kind of factor: one of these is turned into another, of the same bread; nobody's other words are touched. */
export function questionOfKind(question: string, kind: FactorKind): string {
  const asked = Object.values(questions).find(
    ([before, after]) =>
      question.startsWith(before) &&
      question.endsWith(after) &&
      question.length > before.length + after.length,
  )
  if (!asked) return question
  const [before, after] = asked
  return usualQuestion(kind, question.slice(before.length, question.length - after.length))
}
