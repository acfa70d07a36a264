import { asSentenceStart } from '@/core/wording/words/list-text.ts'
import type { Bake } from './start-bake.ts'

/** What was taken, in a few words under the press that led to it. */
export function takenText(bake: Bake): string {
  switch (bake.from) {
    case 'usual':
      return asSentenceStart(bake.bread.name)
    case 'house':
      return bake.house.name
    case 'trial':
      return bake.plan.question
    case 'pasted':
      return `${bake.formula.ingredients.length} ingredients, as pasted`
    case 'plain':
    case 'sample':
      return ''
  }
}
