import { letterOfLevel } from '@/core/session/line.ts'
import { sessionSealed, sessionUnsealed } from './session-sealed.ts'
import { planIn, sessionIn, type TastingRecords } from './tasting-records.ts'

/** What one code stands for. */
export interface KeyRow {
  code: string
  letter: string
  levelId: string
  pieceId: string
}

/**
 * The key: which code is which line. Given out to anybody once the session is unsealed; before that only to whoever keeps the
 * key by the plan: the helper at any time, the baker (who must put codes to the pieces) until something is served. With `peek`,
 * handing it out must be logged as a peek, about the session.
 */
export function codeKey(
  records: TastingRecords,
  sessionId: string,
  asker: 'baker' | 'helper' | 'taster',
): { ok: true; peek: boolean; rows: KeyRow[] } | { ok: false; reason: 'still-sealed' } {
  const session = sessionIn(records, sessionId)
  const plan = planIn(records, session)
  const unsealed = sessionUnsealed(records.events, sessionId)
  const keeps = asker === plan.keyKeptBy
  const mayLook = keeps && (asker === 'helper' || !sessionSealed(records, sessionId))
  if (!unsealed && !mayLook) return { ok: false, reason: 'still-sealed' }
  const pieces = new Map(session.pieces.map((piece) => [piece.id, piece]))
  const rows = session.dealt.servings.flatMap(({ code, pieceId }) => {
    const levelId = pieces.get(pieceId)?.levelId
    const letter = levelId === undefined ? null : letterOfLevel(session, levelId)
    return levelId === undefined || letter === null ? [] : [{ code, letter, levelId, pieceId }]
  })
  return { ok: true, peek: !unsealed, rows }
}
