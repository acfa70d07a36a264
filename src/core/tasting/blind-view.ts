import type { Serving, Session } from '@/core/session/session-record.ts'
import type { AnswerScale } from '@/core/trial/response.ts'
import { tasterQuestions } from './taster-questions.ts'
import { planIn, sessionIn, type TastingRecords } from './tasting-records.ts'
import { tastingState } from './tasting-state.ts'

/**
 * All that a taster's screen, print or file may hold: codes, positions and questions. There is no place in it for a level, a
 * label, a letter, a weight or the identity of a dough, piece or serving; a code leads back to its serving only by
 * `servingByCode`.
 */
export interface BlindView {
  servings: { code: string; position: number; done: boolean }[]
  /** The code to offer next; null when all servings are scored. */
  nextCode: string | null
  /** The warm-up: offered first, not scored. */
  warmUpCode: string | null
  sets: { codes: string[]; done: boolean }[]
  questions: { responseId: string; name: string; scale: AnswerScale }[]
  complete: boolean
}

/** The blind view of one taster of a session, as it stands. Positions count from 1 and skip what was not served. */
export function blindView(records: TastingRecords, sessionId: string, tasterId: string): BlindView {
  const session = sessionIn(records, sessionId)
  const state = tastingState(records, sessionId)
  const taster = state.tasters.find((one) => one.tasterId === tasterId)
  const asked = taster?.asked ?? []
  const open = new Set(taster?.missing.map(({ about }) => about.id))
  const warmUp = session.dealt.servings.find((serving) => serving.flightId === null)
  return {
    servings: asked.flatMap(({ about, codes, position }) =>
      position === null ? [] : [{ code: codes.join(), position, done: !open.has(about.id) }],
    ),
    nextCode: taster?.missing.find(({ about }) => about.kind === 'serving')?.codes.join() ?? null,
    warmUpCode: warmUp?.code ?? null,
    sets: asked.flatMap(({ about, codes }) =>
      about.kind === 'set' ? [{ codes, done: !open.has(about.id) }] : [],
    ),
    questions: tasterQuestions(planIn(records, session)).map(({ id, name, scale }) => ({
      responseId: id,
      name,
      scale,
    })),
    complete: taster?.complete ?? true,
  }
}

/** The serving under a code; null for a code that is not out in this session. */
export function servingByCode(session: Session, code: string): Serving | null {
  return session.dealt.servings.find((serving) => serving.code === code) ?? null
}
