import type { FactorKind } from '@/core/trial/factor.ts'

const questions: Record<FactorKind, string> = {
  hydration: 'How wet should our country loaf be?',
  salt: 'How much salt does our country loaf need?',
  yeast: 'How much yeast does our country loaf need?',
  'preferment-share': 'How much preferment does our country loaf need?',
  'flour-share': 'How much of another flour does our country loaf take?',
  ingredient: 'How much oil, milk or malt does our country loaf need?',
  'rest-time': 'How long should our dough rest?',
  'proof-time': 'How long should our country loaf proof?',
  'cold-hours': 'How many cold hours does our country loaf need?',
  'fold-count': 'How many folds does our dough need?',
  'bake-temperature': 'How hot should our country loaf bake?',
  'bake-time': 'How long should our country loaf bake?',
  'piece-mass': 'How heavy should our country loaf be?',
  choice: 'Which makes the better country loaf?',
  own: 'What makes our country loaf better?',
}

/** The question for another kind of factor: nobody's own words are touched, only one of these is turned into another. */
export function questionOfKind(question: string, kind: FactorKind): string {
  return Object.values(questions).includes(question) ? questions[kind] : question
}
