import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

export interface LevelPhoto {
  photoId: string
  caption: string
  session: number
}

/** The logged photos of each level by its id, oldest first; photos of nothing that has a level are left out. */
export function photosByLevel(
  whole: Pick<WholeTrial, 'sessions' | 'events'>,
): Map<string, LevelPhoto[]> {
  const levelOf = new Map<string, { levelId: string; session: number }>()
  for (const { number: session, batches, pieces, dealt } of whole.sessions) {
    for (const { id, levelId } of batches) if (levelId) levelOf.set(id, { levelId, session })
    for (const { id, levelId } of pieces) if (levelId) levelOf.set(id, { levelId, session })
    for (const { id, pieceId } of dealt.servings) {
      const piece = levelOf.get(pieceId)
      if (piece) levelOf.set(id, piece)
    }
  }
  const found = new Map<string, LevelPhoto[]>()
  for (const event of effectiveEvents(whole.events)) {
    if (event.kind !== 'photo') continue
    const of = levelOf.get(event.about.id)
    if (!of) continue
    const photo = { photoId: event.photoId, caption: event.caption ?? '', session: of.session }
    found.set(of.levelId, [...(found.get(of.levelId) ?? []), photo])
  }
  return found
}
