import type { FindingsDocument, FoundLevel } from '@/core/findings/findings-document.ts'
import { levelNameText } from '@/core/wording/words/level-text.ts'

/** What findings need to name a level, which they know by its id. */
export type LevelNaming = Pick<FindingsDocument, 'factor' | 'levels'>

/** A level of the findings as it is called, with the factor's unit: "74 %", or an option by its name. */
export function levelInWords(levelId: string, naming: LevelNaming): string {
  return levelNameText(levelOf(levelId, naming), naming.factor.unitOfMeasure)
}

/** The same without the unit: an end of a pair, a mark in a picture. */
export function levelInShort(levelId: string, naming: Pick<LevelNaming, 'levels'>): string {
  return levelNameText(levelOf(levelId, naming), '')
}

/** The level of an id; findings speak of no other than they list. */
export function levelOf(levelId: string, { levels }: Pick<LevelNaming, 'levels'>): FoundLevel {
  const level = levels.find(({ id }) => id === levelId)
  if (!level) throw new RangeError(`the findings have no level ${levelId}`)
  return level
}

/** A response of the findings as it is called. */
export function responseInWords(
  responseId: string,
  { responses }: Pick<FindingsDocument, 'responses'>,
): string {
  const response = responses.find(({ id }) => id === responseId)
  if (!response) throw new RangeError(`the findings have no response ${responseId}`)
  return response.name
}
