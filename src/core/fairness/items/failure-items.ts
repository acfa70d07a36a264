import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { LoggedSession } from '@/core/fairness/logged-sessions.ts'
import { bakes } from '@/core/session/bakes.ts'
import { failureOfPiece } from '@/core/whole-trial/piece-failure.ts'
import { madeItem } from './made-item.ts'
import { spreadOf } from './warmth-items.ts'

/** Fewer failures than this say nothing about practice. */
const fewestFailures = 4

/**
 * Failures by level, in percent of its counted pieces: what is lost unequally is not lost by chance. And whether they came
 * early, in the order of baking: hands learn over the day.
 */
export function failureItems(logged: readonly LoggedSession[]): FairnessItem[] {
  const pieces = logged.flatMap(({ session, effective }) => {
    const failed = failureOfPiece(session, effective)
    const baked = new Map(bakes(session, effective).map((bake) => [bake.pieceId, bake.inAt]))
    const order = session.dealt.flights.flatMap(({ pieceIds }) => pieceIds)
    const at = (id: string) => baked.get(id) ?? null
    const turn = order.toSorted((a, b) => (at(a) ?? Infinity) - (at(b) ?? Infinity) || 0)
    return session.pieces
      .filter(({ role }) => role === 'counted')
      .map(({ id, levelId }) => ({
        levelId,
        failed: failed.has(id),
        early: turn.indexOf(id) < turn.length / 2,
      }))
  })
  const lost = pieces.filter(({ failed }) => failed)
  const spread = spreadOf(
    pieces.map(({ levelId, failed }) => ({ levelId, value: failed ? 100 : 0 })),
  )
  if (lost.length === 0 || !spread) return []
  const { perLevel, ...ends } = spread
  const data = { failed: lost.length, pieces: pieces.length, ...ends }
  const items: FairnessItem[] = [
    madeItem('failures-by-level', {
      ...{ size: ends.high - ends.low, data, perLevel, when: 'after', path: '/sparePieces' },
      remedies: [{ code: 'repeat-the-lost' }],
    }),
  ]
  if (lost.length < fewestFailures) return items
  const early = lost.filter((piece) => piece.early).length
  const late = lost.length - early
  const size = ((early - late) / lost.length) * 100
  const remedies = [{ code: 'practise-first' as const }]
  const found = { data: { early, late }, remedies, path: '' }
  return [...items, madeItem('practice', { ...found, size: Math.max(0, size), when: 'after' })]
}
