import { absent } from '@/core/findings/reason.ts'
import type { JustAboutRight } from '@/core/findings/response-findings-shape.ts'
import type { ScoreRow, ScoreTable } from '@/core/findings/table/score-table.ts'
import { justRightShares } from '@/core/statistics/description/just-right-shares.ts'
import { meanDrop } from '@/core/statistics/description/mean-drop.ts'

const middle = 3
type Drop = JustAboutRight['drops'][number]

/**
 * Too much or too little: for every just-about-right response the shares below, at and above the middle, and how far
 * the score at `index` drops on each side against just right, within taster and piece: a piece that is bad for another reason lowers its
 * score whatever it is called, and pieces of one dough are no new doughs. Where nobody shared a piece, within taster and level. A drop is given only for a group of at
 * least a fifth of the answers, 5 servings and 4 tasters. A just-about-right response has none about itself or another.
 */
export function tooMuchOrTooLittle(scores: ScoreTable, index: number): JustAboutRight[] {
  if (scores.responses[index]?.scale === 'just-about-right') return []
  return scores.responses.flatMap((response, at) => {
    if (response.scale !== 'just-about-right') return []
    const answers = scores.rows.flatMap((row) => row.values[at] ?? [])
    if (answers.length === 0) return []
    const { below, right, above } = justRightShares(answers, middle)
    const both = scores.rows.filter((row) => row.values[at] != null && row.values[index] != null)
    const drops = (['below', 'above'] as const).map((side) => dropOf(scores, both, at, index, side))
    return [{ responseId: response.id, below, right, above, drops }]
  })
}

function dropOf(
  scores: ScoreTable,
  rows: readonly ScoreRow[],
  at: number,
  index: number,
  side: Drop['side'],
): Drop {
  const answer = (row: ScoreRow) => row.values[at] as number
  const isGroup = (row: ScoreRow) =>
    side === 'below' ? answer(row) < middle : answer(row) > middle
  const group = rows.filter(isGroup)
  const n = group.length
  const tasters = new Set(group.map(({ taster }) => taster ?? '')).size
  const facts = { side, n, tasters }
  const missing = (reason: Parameters<typeof absent>[0]): Drop => {
    const none = absent(reason)
    return { ...facts, drop: none, low: none, high: none }
  }
  if (n === 0) return missing('group-empty')
  if (n < 5 || tasters < 4 || n < rows.length / 5) return missing('group-too-small')
  const used = rows.filter((row) => isGroup(row) || answer(row) === middle)
  const names = [...new Set(used.map(({ taster }) => taster ?? ''))]
  const code = new Map(names.map((name, taster) => [name, taster]))
  const pieces = new Map([...new Set(used.map(({ piece }) => piece))].map((key, at) => [key, at]))
  const shared = pieces.size < used.length
  const of = (row: ScoreRow) => (shared ? (pieces.get(row.piece) as number) : row.level)
  const found = meanDrop(
    {
      y: used.map((row) => row.values[index] as number),
      block: used.map(({ taster }) => code.get(taster ?? '') as number),
      level: used.map(of),
      blockCount: names.length,
      levelCount: shared ? pieces.size : scores.levels.length,
    },
    used.map(isGroup),
  )
  if (!found.ok) return missing(found.reason)
  return { ...facts, drop: found.drop, low: found.low, high: found.high }
}
