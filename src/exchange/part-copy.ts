import { sessionUnsealed } from '@/core/seal/sealed.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Part } from '@/table/subjects.ts'

/** The parts that hold a copy of the trial; a taster holds a slip, and who watches is told how far things are. */
export type HelpingPart = Extract<Part, 'bench' | 'oven' | 'key'>

export const helps = (part: Part): part is HelpingPart =>
  part === 'bench' || part === 'oven' || part === 'key'

/**
 * What a helper's device may know of a trial, as a trial of its own that holds together. Of a session whose codes are kept nobody
 * gets a ballot; which code is which and what lies under the cups is with the key alone; and the oven has letters alone, as long
 * as the level did its work before it. Once a session is unsealed everybody has all of it; the trial's seed, by which letters
 * and codes of every session could be drawn again, stays with the baker and the key.
 */
export function partCopy(whole: WholeTrial, part: HelpingPart): WholeTrial {
  const open = new Set(
    whole.sessions
      .filter(({ id }) => sessionUnsealed(whole.events, id))
      .map((session) => session.id),
  )
  const kept = (sessionId: string | null) => sessionId !== null && !open.has(sessionId)
  const lettersAlone = new Set(
    whole.sessions
      .filter((session) => part === 'oven' && kept(session.id) && lettersDo(whole, session))
      .map(({ id }) => id),
  )
  const sessions = whole.sessions.map((session) => {
    if (open.has(session.id) || part === 'key') return session
    const uncoded = withoutKey(session)
    return lettersAlone.has(session.id) ? inLetters(uncoded, whole) : uncoded
  })
  const told = whole.events.filter(
    (event) =>
      !kept(event.sessionId) ||
      part === 'key' ||
      (!ofKey(event) && !(lettersAlone.has(event.sessionId ?? '') && tellsLevel(event))),
  )
  const ids = new Set(told.map(({ id }) => id))
  const events = told.filter(({ corrects }) => corrects === undefined || ids.has(corrects))
  const photoIds = new Set(
    events.flatMap((event) => (event.kind === 'photo' ? [event.photoId] : [])),
  )
  return {
    ...whole,
    trial: part === 'key' ? whole.trial : { ...whole.trial, seed: 0 },
    sessions,
    events,
    ballots: whole.ballots.filter(({ sessionId }) => open.has(sessionId)),
    photos: whole.photos.filter(({ id }) => part === 'key' || photoIds.has(id)),
  }
}

/** Whether who works the oven does without the levels: not where bake or proof are what differs. */
function lettersDo(whole: WholeTrial, session: Session): boolean {
  const plan = planOfSession(whole, session)
  return plan.levels.length > 0 && plan.factor.splitsAt === 'mix'
}

/** A session without its codes, and with the tickets under its cups untold. */
function withoutKey(session: Session): Session {
  const { tickets, ...dealt } = session.dealt
  return {
    ...session,
    dealt: {
      ...{ ...dealt, seed: 0, servings: [], tasterOrders: [], sets: [] },
      ...(tickets ? { tickets: [] } : {}),
    },
  }
}

/**
 * A session in which each dough's level is a place-holder: the first letter has the plan's first level, and so on, which says
 * nothing since letters are dealt at random. Lists that were made in the order of levels are put in another.
 */
function inLetters(session: Session, whole: WholeTrial): Session {
  const { levels } = planOfSession(whole, session)
  const letters = session.dealt.letters.toSorted((a, b) => (a.letter < b.letter ? -1 : 1))
  const stands = new Map(letters.map(({ levelId }, at) => [levelId, levels[at]?.id ?? levelId]))
  const level = (id: string) => stands.get(id) ?? id
  const byId = (a: { id: string }, b: { id: string }) => (a.id < b.id ? -1 : 1)
  return {
    ...session,
    batches: session.batches
      .map((batch) => ({ ...batch, levelId: batch.levelId === null ? null : level(batch.levelId) }))
      .toSorted((a, b) => (a.letter < b.letter ? -1 : 1)),
    pieces: session.pieces
      .map((piece) => ({ ...piece, levelId: level(piece.levelId) }))
      .toSorted(byId),
    dealt: {
      ...session.dealt,
      letters: letters.map((each) => ({ ...each, levelId: level(each.levelId) })),
      tickets: [],
    },
  }
}

/** Entries about codes, or about who tastes. */
function ofKey({ about, kind }: Event): boolean {
  return about.kind === 'serving' || about.kind === 'set' || kind === 'peeked' || kind === 'served'
}

/** Entries by which a level could be told, or that hold a baker's own words. */
function tellsLevel({ kind }: Event): boolean {
  return ['weighed', 'worked-in', 'note', 'photo', 'measured'].includes(kind)
}
