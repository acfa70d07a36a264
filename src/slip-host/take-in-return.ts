import { sealOf } from '@/core/seal/sealed.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import { servingByCode, setByCodes } from '@/core/tasting/blind-view.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { oddReturnText } from '@/core/wording/tasting/slip-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import type { NewBallot, Notebook } from '@/notebook/notebook.ts'
import { openSlot } from '@/slip/ballot-slip.ts'
import type { ReturnSlip } from '@/slip/return-slip.ts'
import {
  againstTaken,
  type HostOfSlips,
  type IssuedSlip,
  oddOfReturn,
  type ReturnRefusal,
  readBack,
  tastedPositions,
} from '@/slip/take-return.ts'

/** What came of one scan, for the line under the camera. */
export type TookIn =
  | {
      came: 'in' | 'replaced' | 'already-in' | 'older' | 'late'
      name: string
      count: number
      of: number
      odd: string
    }
  | { came: 'other-answers'; name: string; text: string }
  | { came: 'refused'; reason: ReturnRefusal | 'nobody-of-that-name'; initials: string }

/** What a slip answers, without the taster: what the notebook then keeps as one ballot. */
type SlipBallot = Pick<NewBallot, 'about' | 'answers'> &
  Partial<Pick<NewBallot, 'startedAt' | 'words' | 'pickedCode' | 'ranked' | 'position'>>

/**
 * What is done where answers of the same taster came another way before. `ask`: nothing is taken until the host says so. `anyway`:
 * the host said so, they are replaced. `where-none-stands`: what is new is taken, what stands stays.
 */
export type AgainstOthers = 'ask' | 'anyway' | 'where-none-stands'

/**
 * Takes a scanned, pasted or sent return in: refused with its reason, known already, or kept ballot by ballot. The same return
 * twice is one.
 */
export async function takeInReturn(
  notebook: Notebook,
  whole: WholeTrial,
  sessionId: string,
  host: HostOfSlips,
  text: string,
  against: AgainstOthers = 'ask',
): Promise<TookIn> {
  const read = readBack(text, host)
  if (!read.ok) return { came: 'refused', reason: read.reason, initials: '' }
  const { back, issued } = read
  const session = whole.sessions.find(({ id }) => id === sessionId)
  if (!session) throw new Error('a return is of a session')
  const trialId = whole.trial.id
  const tasterId = issued.tasterId ?? idOf(back.initials, whole.kitchen)
  if (tasterId === undefined)
    return { came: 'refused', reason: 'nobody-of-that-name', initials: back.initials }
  const name = tasterName(tasterId, whole.kitchen)
  const ballots = whole.ballots.filter(({ sessionId }) => sessionId === session.id)
  const slips = ballots.flatMap(({ tasterId: whose, cameBy }) =>
    cameBy?.way === 'slip' ? [{ tasterId: whose, ...cameBy }] : [],
  )
  const stands = effectiveBallots(ballots).filter((one) => one.tasterId === tasterId)
  const known = againstTaken(back, tasterId, slips)
  const elsewhere = known === 'first' && stands.length > 0
  const others = known === 'other-answers' || elsewhere
  if (others && against === 'ask') return { came: 'other-answers', name, text }
  // As the oven gives them, and by the codes on the plates: then the phone alone knows what was tasted when.
  const { serving } = planOfSession(whole, session)
  const ownOrder = serving !== 'as-baked' && issued.slot !== openSlot
  const told = {
    name,
    count: back.servings.length,
    of: issued.codes.length,
    odd: oddReturnText(oddOfReturn(back, ownOrder)),
  }
  if (known === 'older') return { came: 'older', ...told }
  const isOwn = (ballot: Ballot, { about }: SlipBallot) =>
    ballot.about.id === about.id && ballot.about.kind === about.kind && ballot.tasterId === tasterId
  // Who went on at another phone tasted what stands before what this one brings.
  const brought = new Set(
    back.servings.map(({ place }) => servingByCode(session, issued.codes[place] ?? '')?.id),
  )
  const earlier = stands.filter(({ about }) => about.kind === 'serving' && !brought.has(about.id))
  const all = answeredOf(back, issued, session.id, {
    positions: ownOrder ? null : tastedPositions(back.servings, earlier.length),
    servingId: (code) => servingByCode(session, code)?.id,
    setId: (codes) => setByCodes(session, tasterId, codes)?.id,
  })
  const elsewise = ({ cameBy }: Ballot) => cameBy?.way !== 'slip' || cameBy.nonce !== back.nonce
  const allowed =
    against === 'where-none-stands'
      ? all.filter((one) => !stands.some((ballot) => isOwn(ballot, one) && elsewise(ballot)))
      : all
  const open = allowed.filter(
    (one) =>
      !ballots.some(
        (ballot) =>
          isOwn(ballot, one) &&
          ballot.cameBy?.way === 'slip' &&
          ballot.cameBy.nonce === back.nonce &&
          (ballot.cameBy.revision === back.revision || says(ballot, one)),
      ),
  )
  if (open.length === 0)
    return allowed.length < all.length
      ? { came: 'other-answers', name, text }
      : { came: 'already-in', ...told }
  const seal = sealOf(whole, session.id)
  const over = seal === 'closed' || seal === 'unsealed'
  const by = { trialId, sessionId: session.id, tasterId }
  for (const one of open) {
    const before = over ? undefined : stands.find((ballot) => isOwn(ballot, one))
    const sameHand = stands.find((ballot) => isOwn(ballot, one) && !elsewise(ballot))
    const because =
      known === 'replaces'
        ? 'a later word of the same phone'
        : 'taken from another phone by the host'
    await notebook.sealBallot({
      ...by,
      ...one,
      // What was tasted stays at the place it was, whatever came from another phone since.
      ...(sameHand?.position === undefined ? {} : { position: sameHand.position }),
      cameBy: {
        way: 'slip',
        nonce: back.nonce,
        revision: back.revision,
        ...(told.odd === '' ? {} : { odd: told.odd }),
      },
      ...(before
        ? {
            replaces: before.id,
            change: { by: known === 'replaces' ? 'the taster' : 'the host', because },
          }
        : {}),
      ...(over ? { late: true } : {}),
    })
  }
  const about = { kind: 'taster', id: tasterId } as const
  const heard = eventsOfSession(whole.events, session.id).some(
    (event) => event.kind === 'allergens-heard' && event.about.id === tasterId,
  )
  if (back.heardAllergens && !heard)
    await notebook.log({ trialId, sessionId: session.id, kind: 'allergens-heard', about })
  return { came: over ? 'late' : known === 'replaces' || others ? 'replaced' : 'in', ...told }
}

function idOf(
  initials: string,
  kitchen: readonly { id: string; kind: string }[],
): string | undefined {
  const asked = initials.trim().toLowerCase()
  return kitchen.find(
    (thing) =>
      thing.kind === 'taster' &&
      'initials' in thing &&
      String(thing.initials).toLowerCase() === asked,
  )?.id
}

/** Whether a ballot that is kept says the same, in whichever order its fields are kept. */
function says(ballot: Ballot, one: SlipBallot): boolean {
  const told = ({ answers, pickedCode, words, ranked }: SlipBallot) => {
    const each = answers.map(({ responseId, value, why }) => [responseId, value, why ?? null])
    return JSON.stringify([each, pickedCode ?? null, words ?? null, ranked ?? null])
  }
  return told(ballot) === told(one)
}

/** The ballots that a return stands for, with the ids that only the host knows. */
function answeredOf(
  back: ReturnSlip,
  issued: IssuedSlip,
  sessionId: string,
  {
    positions,
    servingId,
    setId,
  }: {
    /** Where the phone says the order of tasting: of each code's place on the slip. */
    positions: ReadonlyMap<number, number> | null
    servingId: (code: string) => string | undefined
    setId: (codes: readonly string[]) => string | undefined
  },
): SlipBallot[] {
  const issuedAt = issued.issuedMinute * 60_000
  const servings = back.servings.flatMap(
    ({ place, answers, words, startedSeconds }): SlipBallot[] => {
      const id = servingId(issued.codes[place] ?? '')
      if (id === undefined) return []
      const position = positions?.get(place)
      return [
        {
          about: { kind: 'serving', id },
          ...(position === undefined ? {} : { position }),
          startedAt: Math.round(issuedAt + startedSeconds * 1000),
          answers: answers.map((answer, at) => ({
            ...answer,
            responseId: issued.responseIds[at] ?? '',
          })),
          ...(words === '' ? {} : { words }),
        },
      ]
    },
  )
  const sets = back.picks.flatMap((pick, place): SlipBallot[] => {
    const codes = issued.sets[place] ?? []
    const id = setId(codes)
    const pickedCode = pick === null ? undefined : codes[pick]
    if (id === undefined || pickedCode === undefined) return []
    return [{ about: { kind: 'set', id }, answers: [], pickedCode }]
  })
  const usual: SlipBallot[] =
    back.usual === null
      ? []
      : [
          {
            about: { kind: 'session', id: sessionId },
            answers: [],
            ...(back.usual === 'no-idea' ? {} : { pickedCode: issued.codes[back.usual] ?? '' }),
          },
        ]
  const ranking: SlipBallot[] =
    back.ranked === null
      ? []
      : [
          {
            about: { kind: 'ranking', id: sessionId },
            answers: [],
            ranked: back.ranked.map((place) => place.map((at) => issued.codes[at] ?? '')),
          },
        ]
  return [...servings, ...ranking, ...sets, ...usual]
}
