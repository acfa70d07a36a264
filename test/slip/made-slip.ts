import type { BallotSlip, SlipQuestion } from '@/slip/ballot-slip.ts'
import type { ReturnSlip } from '@/slip/return-slip.ts'
import { slipKey } from '@/slip/slip-key.ts'
import type { HostOfSlips, IssuedSlip } from '@/slip/take-return.ts'

export const secret = Uint8Array.from({ length: 16 }, (_, at) => (at * 37 + 11) % 256)
const tag = 0xbeefcafe

const liking: SlipQuestion = {
  name: 'Liking',
  definition: null,
  liking: true,
  scale: {
    kind: 'nine-point',
    anchors: [
      { at: 1, text: 'dislike extremely' },
      { at: 5, text: 'neither like nor dislike' },
      { at: 9, text: 'like extremely' },
    ],
  },
}
const crisp: SlipQuestion = {
  name: 'Crispness',
  definition: 'how loudly the crust breaks at the first bite',
  liking: false,
  scale: {
    kind: 'nine-point',
    anchors: [
      { at: 1, text: 'soft' },
      { at: 9, text: 'very crisp' },
    ],
    references: [{ at: 7, text: 'the cracker on the saucer' }],
  },
}
const salty: SlipQuestion = {
  name: 'Saltiness',
  definition: null,
  liking: false,
  scale: { kind: 'just-about-right', low: 'much too bland', high: 'much too salty' },
}
const height: SlipQuestion = {
  name: 'Height',
  definition: null,
  liking: false,
  scale: { kind: 'measured', unitOfMeasure: 'mm', measure: 'own' },
}

/** Made-up codes, rising by 37 from 127. */
export const codesOf = (count: number) =>
  Array.from({ length: count }, (_, at) => String(127 + ((at * 37) % 870)))

/** A slip of a made-up tasting: so many servings and questions (four at most), with a duo-trio set and the last question. */
export function madeSlip(servings = 4, asked = 2, change: Partial<BallotSlip> = {}): BallotSlip {
  const slot = change.slot ?? 3
  const issue = change.issue ?? 0
  return {
    tag,
    slot,
    issue,
    issuedMinute: 29_600_000,
    key: slipKey(secret, slot, issue),
    codes: codesOf(servings),
    warmUpCode: '981',
    rest: { restSeconds: 60, pauseAfter: 3, pauseSeconds: 300 },
    asksUsual: true,
    asTheyCome: false,
    sets: [['411', '522', '633']],
    tellApart: { test: 'duo-trio' },
    ranking: null,
    allergens: ['cereals with gluten', 'milk', 'sesame'],
    questions: [liking, crisp, salty, height].slice(0, asked),
    ...change,
  }
}

/** What its taster sends back: every serving scored in order, a reason, words, a number, the set and the guess. */
export function madeReturn(slip: BallotSlip, change: Partial<ReturnSlip> = {}): ReturnSlip {
  return {
    tag: slip.tag,
    slot: slip.slot,
    issue: slip.issue,
    initials: '',
    nonce: 0x1234abcd,
    revision: 1,
    heardAllergens: true,
    servings: slip.codes.map((_, place) => ({
      place,
      answers: slip.questions.map(({ scale }, at) =>
        scale.kind === 'measured'
          ? { value: 41.5 }
          : place === 1 && at === 1
            ? { value: null, why: 'had a cold' }
            : { value: 1 + ((place + at) % 5) },
      ),
      words: place === 0 ? 'smells of malt' : '',
      startedSeconds: 100 + place * 90,
      sealedSeconds: 160 + place * 90,
    })),
    picks: slip.sets.map(() => 1),
    usual: 2,
    ranked: null,
    ...change,
  }
}

export const issuedOf = (slip: BallotSlip, tasterId: string | null = 'ta-3'): IssuedSlip => ({
  slot: slip.slot,
  issue: slip.issue,
  codes: slip.codes,
  issuedMinute: slip.issuedMinute,
  responseIds: slip.questions.map((_, at) => `r${at}`),
  sets: slip.sets,
  ...(slip.ranking ? { ranks: slip.ranking.ties ? ('shared' as const) : ('apart' as const) } : {}),
  tasterId,
})

export const hostOf = (...slips: BallotSlip[]): HostOfSlips => ({
  tag,
  secret,
  issued: slips.map((slip) => issuedOf(slip)),
})
