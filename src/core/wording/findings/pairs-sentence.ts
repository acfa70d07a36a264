import type { Conclusion } from '@/core/findings/evidence/conclusion-shape.ts'
import { asSentenceStart, listText } from '@/core/wording/words/list-text.ts'
import { type LevelNaming, levelInShort, levelInWords } from './named-in-findings.ts'

/** Which levels differ, of the pairs the conclusion shows: "66 and 82 % differ from 70, 74 and 78 %." */
export function pairsSentence({ rung, near, shown }: Conclusion, naming: LevelNaming): string {
  if (rung !== 'factor')
    return near?.differ
      ? `Highest at ${levelInWords(near.highest, naming)}, lowest at ${levelInWords(near.lowest, naming)}; of these ${near.rung} alone no pair is claimed.`
      : 'No two are told apart.'
  const pairs = shown.flatMap((one) => one.pairs)
  if (pairs.length === 0) return 'No two levels are told apart one by one.'
  return pairsByLevel(pairs, naming)
    .map(
      ({ levels, from }) =>
        `${asSentenceStart(inRow(levels, naming))} ${levels.length === 1 ? 'differs' : 'differ'} from ${inRow(from, naming)}.`,
    )
    .join(' ')
}

/** The pairs as few statements: the level in most pairs first, those with the same partners together. */
function pairsByLevel(pairs: readonly { a: string; b: string }[], { levels }: LevelNaming) {
  const order = levels.map(({ id }) => id)
  const inOrder = (ids: readonly string[]) => order.filter((id) => ids.includes(id))
  const statements: { levels: string[]; from: string[] }[] = []
  let left = [...pairs]
  while (left.length > 0) {
    const partners = (id: string) =>
      inOrder(left.flatMap(({ a, b }) => (a === id ? [b] : b === id ? [a] : [])))
    const [most = ''] = order.toSorted((x, y) => partners(y).length - partners(x).length)
    const from = partners(most)
    const same = statements.find((one) => one.from.join() === from.join())
    if (same) same.levels = inOrder([...same.levels, most])
    else statements.push({ levels: [most], from })
    left = left.filter(({ a, b }) => a !== most && b !== most)
  }
  return statements
}

function inRow(ids: readonly string[], naming: LevelNaming): string {
  return listText(
    ids.map((id, index) =>
      index === ids.length - 1 ? levelInWords(id, naming) : levelInShort(id, naming),
    ),
  )
}
