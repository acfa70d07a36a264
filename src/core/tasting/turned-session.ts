import type { Turned } from '@/core/session/event-record.ts'
import type { Serving, Session, TellApartSet } from '@/core/session/session-record.ts'

/**
 * A session once its plates and tickets are turned: what lay under each serving, which sample of a set was the odd one, and
 * which level each dough was take the place of the place-holders. What was plated twice repeats what came before it.
 */
export function turnedSession(session: Session, turned: Turned): Session {
  const pieceOf = new Map(turned.plates?.map(({ servingId, pieceId }) => [servingId, pieceId]))
  const levels = foundLevels(session, turned)
  const level = (id: string) => levels.get(id) ?? id
  const { dealt } = session
  return {
    ...session,
    batches: session.batches.map((batch) => ({
      ...batch,
      levelId: batch.levelId === null ? null : level(batch.levelId),
    })),
    pieces: session.pieces.map((piece) => ({ ...piece, levelId: level(piece.levelId) })),
    dealt: {
      ...dealt,
      letters: dealt.letters.map((each) => ({ ...each, levelId: level(each.levelId) })),
      servings: repeated(
        dealt.servings.map((serving) => ({
          ...serving,
          pieceId: pieceOf.get(serving.id) ?? serving.pieceId,
        })),
        turned.plates?.map(({ servingId }) => servingId) ?? [],
      ),
      sets: dealt.sets.map((set) => turnedSet(set, turned)),
    },
  }
}

/** From the level that stands for a dough to the one it turned out to be. */
function foundLevels(session: Session, { doughs = [] }: Turned): ReadonlyMap<string, string> {
  return new Map(
    doughs.flatMap(({ batchId, levelId }) => {
      const stood = session.batches.find(({ id }) => id === batchId)?.levelId
      return typeof stood === 'string' ? [[stood, levelId] as const] : []
    }),
  )
}

/** Of servings that were turned, in the order of tasting: the first of a piece is its own, the next one repeats it. */
function repeated(servings: readonly Serving[], inOrder: readonly string[]): Serving[] {
  const first = new Map<string, string>()
  const repeats = new Map<string, string | null>()
  for (const id of inOrder) {
    const pieceId = servings.find((serving) => serving.id === id)?.pieceId
    if (pieceId === undefined) continue
    repeats.set(id, first.get(pieceId) ?? null)
    if (!first.has(pieceId)) first.set(pieceId, id)
  }
  return servings.map((serving) => {
    const found = repeats.get(serving.id)
    if (found === undefined) return serving
    const { repeats: _before, ...own } = serving
    return found === null ? own : { ...own, repeats: found }
  })
}

/**
 * The odd one of three is the sample whose level comes once; of a pair the right answer is the sample of the level that it was
 * before.
 */
function turnedSet(set: TellApartSet, { samples = [] }: Turned): TellApartSet {
  const found = new Map(
    samples.flatMap(({ setId, code, levelId }) => (setId === set.id ? [[code, levelId]] : [])),
  )
  if (found.size === 0) return set
  const wanted = set.samples.find(({ code }) => code === set.answerCode)?.levelId
  const now = set.samples.map((sample) => ({
    ...sample,
    levelId: found.get(sample.code) ?? sample.levelId,
  }))
  const times = (levelId: string) => now.filter((each) => each.levelId === levelId).length
  const answer =
    now.length === 3
      ? now.find(({ levelId }) => times(levelId) === 1)
      : now.find(({ levelId }) => levelId === wanted)
  return { ...set, samples: now, answerCode: answer?.code ?? set.answerCode }
}
