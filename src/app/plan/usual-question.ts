import type { FactorKind } from '@/core/trial/factor.ts'

const questions: Record<FactorKind, string> = {
  hydration: 'How wet should our pan bread be?',
  salt: 'How much salt does our pan bread need?',
  yeast: 'How much yeast does our pan bread need?',
  'preferment-share': 'How much preferment does our pan bread need?',
  'flour-share': 'How much of another flour does our pan bread take?',
  ingredient: 'How much of it does our pan bread need?',
  'rest-time': 'How long should our dough rest?',
  'proof-time': 'How long should our pan bread proof?',
  'cold-hours': 'How many cold hours does our pan bread need?',
  'fold-count': 'How many folds does our dough need?',
  'bake-temperature': 'How hot should our pan bread bake?',
  'bake-time': 'How long should our pan bread bake?',
  'piece-mass': 'How heavy should our pan bread be?',
  choice: 'Which makes the better pan bread?',
  own: 'What makes our pan bread better?',
}

/** The question for another kind of factor: nobody's own words are touched, only one of these is turned into another. */
export function questionOfKind(question: string, kind: FactorKind): string {
  return Object.values(questions).includes(question) ? questions[kind] : question
}
