import { letterOfLevel } from './line.ts'
import type { Session } from './session-record.ts'

/** One code and what it stands for. */
export interface KeyLine {
  code: string
  letter: string
  levelId: string
}

/** The code of one piece; a warm-up belongs to no flight. */
export interface PieceKey extends KeyLine {
  pieceId: string
  flight: number | null
}

/** What lies under the codes of one taster's tell-apart set, in the order it is offered. */
export interface SetKey {
  tasterId: string
  samples: KeyLine[]
}

/**
 * The key by which whoever plates puts each code on its piece: piece by piece in the order of the letters and flights, then the
 * tell-apart set of every taster. Not for eyes that score.
 */
export function servingKey(session: Session): { pieces: PieceKey[]; sets: SetKey[] } {
  const named = (code: string, levelId: string): KeyLine => ({
    code,
    levelId,
    letter: letterOfLevel(session, levelId) ?? '',
  })
  const pieces = session.dealt.servings.flatMap(({ code, pieceId, flightId }) => {
    const piece = session.pieces.find(({ id }) => id === pieceId)
    const flight = session.dealt.flights.find(({ id }) => id === flightId)?.number ?? null
    return piece ? [{ ...named(code, piece.levelId), pieceId, flight }] : []
  })
  return {
    pieces: pieces.toSorted(
      (one, other) =>
        inAlphabet(one.letter, other.letter) || (one.flight ?? 0) - (other.flight ?? 0),
    ),
    sets: session.dealt.sets.map(({ tasterId, samples }) => ({
      tasterId,
      samples: samples.map(({ code, levelId }) => named(code, levelId)),
    })),
  }
}

function inAlphabet(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0
}
