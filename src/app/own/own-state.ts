import type { Said } from '@/app/tasting/seat/said.ts'
import type { Answer } from '@/core/seal/blind/answer.ts'
import type { BlindView } from '@/core/seal/blind/blind-view.ts'
import { readRanked } from '@/core/seal/blind/ranked-codes.ts'
import { samplesAtEnd } from '@/core/seal/blind/samples-at-end.ts'
import { type BallotSlip, openSlot } from '@/slip/ballot-slip.ts'
import type { ReturnSlip } from '@/slip/return-slip.ts'

/** What a taster's own phone keeps of a slip: named texts, as the notebook keeps what is not finished. */
export type OwnTexts = Readonly<Record<string, string>>

/** What was sealed of one code. */
export interface OwnSealed {
  answers: Answer[]
  words: string
  startedAt: number
  sealedAt: number
  /** Where it was sealed anew: when it was sealed first. */
  firstSealedAt?: number
}

export const responseIdAt = (place: number) => `q${place}`
export const doneField = (code: string) => `done/${code}`
export const setField = (place: number) => `set/${place}`

export const sealedOf = (texts: OwnTexts, code: string): OwnSealed | null => {
  const text = texts[doneField(code)]
  return text === undefined ? null : (JSON.parse(text) as OwnSealed)
}

/** The codes in the order in which they were first sealed, then the others as the slip has them. */
function asSealed(codes: readonly string[], texts: OwnTexts): string[] {
  const sealedAt = (code: string) => {
    const sealed = sealedOf(texts, code)
    return sealed ? (sealed.firstSealedAt ?? sealed.sealedAt) : Number.MAX_SAFE_INTEGER
  }
  return codes.toSorted((one, other) => sealedAt(one) - sealedAt(other))
}

/** What the taster said between samples, as `textsOfSaid` kept it, and what of the slip they sealed last. */
export function saidOf(slip: BallotSlip, texts: OwnTexts): Said {
  const sealed = slip.codes.flatMap((code) => {
    const own = sealedOf(texts, code)
    return own ? [{ code, at: own.sealedAt }] : []
  })
  return {
    warmedUp: texts.warmedUp === 'yes',
    restedAfter: texts.restedAfter === undefined ? null : Number(texts.restedAfter),
    lastSealed: sealed.toSorted((one, other) => other.at - one.at)[0] ?? null,
  }
}

export const textsOfSaid = ({ warmedUp, restedAfter }: Partial<Said>): OwnTexts => ({
  ...(warmedUp ? { warmedUp: 'yes' } : {}),
  ...(typeof restedAfter === 'number' ? { restedAfter: String(restedAfter) } : {}),
})

/** Whether the taster says which code stands on the table; else the next one is the slip's. */
export const choosesCodes = ({ slot, asTheyCome }: BallotSlip): boolean =>
  slot === openSlot || asTheyCome

/** The blind view of a slip as far as its taster has come: made of the slip and of their own answers, of nothing else. */
export function ownView(slip: BallotSlip, texts: OwnTexts): BlindView {
  const open = slip.codes.filter((code) => sealedOf(texts, code) === null)
  const chosen = choosesCodes(slip) ? open.find((code) => code === texts.chosen) : undefined
  const next = chosen ?? (slip.slot === openSlot ? undefined : open[0])
  // The one that is scored now stands behind what was scored before, whichever place the slip gave it.
  const nextFirst = slip.codes.toSorted(
    (one, other) => Number(other === next) - Number(one === next),
  )
  const servings = asSealed(nextFirst, texts).map((code, at) => {
    const sealed = sealedOf(texts, code)
    return { code, position: at + 1, done: sealed !== null, sealed }
  })
  const sets = slip.sets.map((codes, place) => ({
    codes,
    offered: slip.tellApart?.test === 'duo-trio' ? codes.slice(1) : codes,
    done: texts[setField(place)] !== undefined,
  }))
  const ranking = slip.ranking
    ? {
        ...slip.ranking,
        codes: samplesAtEnd(servings).map(({ code }) => code),
        done: texts.ranked !== undefined,
      }
    : null
  const guess = slip.asksUsual ? { done: texts.usual !== undefined } : null
  return {
    sessionNumber: 1,
    servings,
    nextCode: next ?? null,
    warmUpCode: slip.warmUpCode,
    warmUpAtSeat: slip.warmUpCode !== null,
    sets,
    tellApart: slip.tellApart,
    questions: slip.questions.map((question, place) => ({
      ...question,
      responseId: responseIdAt(place),
    })),
    rest: slip.rest,
    ranking,
    guess,
    complete:
      open.length === 0 &&
      ranking?.done !== false &&
      sets.every(({ done }) => done) &&
      guess?.done !== false,
  }
}

/** What goes back to the host of all that was sealed so far, in the order in which it was. */
export function ownReturn(slip: BallotSlip, texts: OwnTexts): ReturnSlip {
  const issuedAt = slip.issuedMinute * 60_000
  const seconds = (at: number) => (at - issuedAt) / 1000
  const servings = asSealed(slip.codes, texts).flatMap((code) => {
    const sealed = sealedOf(texts, code)
    if (!sealed) return []
    const answers = slip.questions.map((_, at) => {
      const answer = sealed.answers.find(({ responseId }) => responseId === responseIdAt(at))
      return answer?.value === null || !answer
        ? { value: null, why: answer?.why ?? 'no reason given' }
        : { value: answer.value }
    })
    return [
      {
        place: slip.codes.indexOf(code),
        answers,
        words: sealed.words,
        startedSeconds: seconds(sealed.startedAt),
        sealedSeconds: seconds(sealed.sealedAt),
      },
    ]
  })
  return {
    tag: slip.tag,
    slot: slip.slot,
    issue: slip.issue,
    initials: slip.slot === openSlot ? (texts.initials ?? '') : '',
    nonce: Number(texts.nonce ?? 0),
    revision: Math.min(255, Number(texts.acts ?? 0)),
    heardAllergens: texts.heard === 'yes',
    servings,
    picks: slip.sets.map((codes, place) => {
      const at = codes.indexOf(texts[setField(place)] ?? '')
      return at < 0 ? null : at
    }),
    usual:
      texts.usual === undefined
        ? null
        : texts.usual === ''
          ? 'no-idea'
          : Math.max(0, slip.codes.indexOf(texts.usual)),
    ranked:
      texts.ranked === undefined
        ? null
        : readRanked(texts.ranked).map((place) => place.map((code) => slip.codes.indexOf(code))),
  }
}
