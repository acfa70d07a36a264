import type { Session } from '@/core/session/session-record.ts'

/** The code under which a piece is served; null for one that is not. */
export function codeOfPiece(session: Pick<Session, 'dealt'>, pieceId: string): string | null {
  return session.dealt.servings.find((serving) => serving.pieceId === pieceId)?.code ?? null
}
