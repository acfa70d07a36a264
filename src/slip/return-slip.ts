import type { Answer } from '@/core/seal/blind/answer.ts'
import { rankingTrouble } from '@/core/seal/blind/ranked-codes.ts'
import { BitReader, BitWriter } from './bits.ts'
import { packedLines, unpackedLines } from './packed-text.ts'
import { returnSeal, sameBytes, sizes } from './slip-key.ts'

/** An answer as it comes back: a value, or why there is none. Its question is known by its place. */
export type ReturnedAnswer = Omit<Answer, 'responseId'>

/** One serving as it was scored, known by its code's place on the slip. */
export interface ReturnedServing {
  place: number
  answers: ReturnedAnswer[]
  words: string
  /** Seconds since the slip was issued, by the taster's own clock. */
  startedSeconds: number
  sealedSeconds: number
}

/** What comes back from a taster's own phone, in the order in which it was first scored. */
export interface ReturnSlip {
  tag: number
  slot: number
  issue: number
  /** As the taster gave them; empty where the slot says who it is. */
  initials: string
  /** Drawn once on the phone: two phones that answer for one slot are told apart by it. */
  nonce: number
  /** Counts the changes: the higher one is the later word. */
  revision: number
  /** The taster was told the allergens and went on. */
  heardAllergens: boolean
  servings: ReturnedServing[]
  /** By set, the place of the code that was picked; null for a set that is still open. */
  picks: (number | null)[]
  /** The place of the code taken for the usual one, `no-idea`, or null where nothing was asked or said. */
  usual: number | 'no-idea' | null
  /** The order, by the codes' places on the slip; null where none was asked or given. */
  ranked: number[][] | null
}

/** What a host keeps of a slip to read its return: codes, questions by their ids, sets, each in the slip's order. */
export interface AskedOfSlip {
  codes: string[]
  responseIds: string[]
  sets: string[][]
  /** Whether the samples are ranked, each in a place of its own or with places to share; left out where they are not. */
  ranks?: 'apart' | 'shared'
}

/** A return of the first version has no order; it is still written where there is none. */
const versions = { plain: 1, withOrder: 2 } as const
const none = { pick: 3, usual: 254, noIdea: 255 } as const
const mostSeconds = 2 ** 24 - 1
const clamped = (seconds: number) => Math.min(mostSeconds, Math.max(0, Math.round(seconds)))

/** The bytes of a return, sealed with the slip's own key at the end. */
export function bytesOfReturn(back: ReturnSlip, key: Uint8Array): Uint8Array {
  const out = new BitWriter()
  const lines = [back.initials]
  out.number(back.ranked ? versions.withOrder : versions.plain, 8)
  out.number(back.tag, 32)
  out.number(back.slot, 8)
  out.number(back.issue, 8)
  out.number(back.nonce, 32)
  out.number(back.revision, 8)
  out.number(back.heardAllergens ? 1 : 0, 1)
  out.number(back.servings.length, 8)
  out.number(back.servings[0]?.answers.length ?? 0, 5)
  for (const serving of back.servings) {
    out.number(serving.place, 8)
    out.number(clamped(serving.startedSeconds), 24)
    out.number(clamped(serving.sealedSeconds), 24)
    out.number(serving.words === '' ? 0 : 1, 1)
    if (serving.words !== '') lines.push(serving.words)
    for (const { value, why } of serving.answers) writeAnswer(out, value, why ?? '', lines)
  }
  out.number(back.picks.length, 4)
  for (const pick of back.picks) out.number(pick ?? none.pick, 2)
  out.number(
    back.usual === null ? none.usual : back.usual === 'no-idea' ? none.noIdea : back.usual,
    8,
  )
  if (back.ranked) {
    out.number(back.ranked.length, 8)
    for (const place of back.ranked) {
      out.number(place.length, 8)
      for (const code of place) out.number(code, 8)
    }
  }
  const packed = packedLines(lines)
  out.number(packed.length, 16)
  out.bytes(packed)
  const bytes = out.done()
  return Uint8Array.from([...bytes, ...returnSeal(key, bytes)])
}

/** A point of a scale in four bits; 0 and the text says why there is none, 15 and the text is a measured number. */
function writeAnswer(out: BitWriter, value: number | null, why: string, lines: string[]): void {
  const point = value !== null && Number.isInteger(value) && value >= 1 && value <= 9
  out.number(value === null ? 0 : point ? value : 15, 4)
  if (value === null) lines.push(why)
  else if (!point) lines.push(String(value))
}

/** What stands at the front of a return, readable before anything of it is believed. */
export function headOfReturn(
  bytes: Uint8Array,
): { tag: number; slot: number; issue: number } | 'newer-version' | null {
  if (bytes.length < 20) return null
  const from = new BitReader(bytes)
  const found = from.number(8)
  if (found > versions.withOrder) return 'newer-version'
  if (found < versions.plain) return null
  return { tag: from.number(32), slot: from.number(8), issue: from.number(8) }
}

/** True when the seal at the end was made with this key: nothing between was changed. */
export function sealHolds(bytes: Uint8Array, key: Uint8Array): boolean {
  const body = bytes.slice(0, Math.max(0, bytes.length - sizes.seal))
  return sameBytes(returnSeal(key, body), bytes.slice(body.length))
}

/** A return whose seal holds, read whole against the slip it answers; null where it does not fit it. */
export function readReturn(bytes: Uint8Array, slip: AskedOfSlip): ReturnSlip | null {
  try {
    return returnOf(new BitReader(bytes.slice(0, bytes.length - sizes.seal)), slip)
  } catch {
    return null
  }
}

function returnOf(
  from: BitReader,
  { codes, responseIds, sets, ranks }: AskedOfSlip,
): ReturnSlip | null {
  const version = from.number(8)
  const head = { tag: from.number(32), slot: from.number(8), issue: from.number(8) }
  const nonce = from.number(32)
  const revision = from.number(8)
  const heardAllergens = from.number(1) === 1
  const count = from.number(8)
  const asked = from.number(5)
  if (count > 0 && asked !== responseIds.length) return null
  const raw = Array.from({ length: count }, () => ({
    place: from.number(8),
    startedSeconds: from.number(24),
    sealedSeconds: from.number(24),
    worded: from.number(1) === 1,
    points: Array.from({ length: asked }, () => from.number(4)),
  }))
  const picks = Array.from({ length: from.number(4) }, () => from.number(2))
  const usual = from.number(8)
  const ranked = version === versions.withOrder ? orderFrom(from) : null
  const lines = unpackedLines(from.bytes(from.number(16)))
  if (!lines) return null
  let at = 0
  const next = () => {
    const line = lines[at]
    if (line === undefined) throw new RangeError('a line of text is missing')
    at += 1
    return line
  }
  const initials = next()
  const servings = raw.map(({ worded, points, ...serving }) => ({
    ...serving,
    words: worded ? next() : '',
    answers: points.map((point) => answerOf(point, next)),
  }))
  const places = servings.map(({ place }) => place)
  if (places.some((place) => place >= codes.length) || new Set(places).size !== places.length)
    return null
  if (picks.length !== sets.length || (usual < none.usual && usual >= codes.length)) return null
  if (ranked && !fits(ranked, codes, ranks)) return null
  return {
    ...head,
    nonce,
    revision,
    heardAllergens,
    initials,
    servings,
    picks: picks.map((pick) => (pick === none.pick ? null : pick)),
    usual: usual === none.usual ? null : usual === none.noIdea ? 'no-idea' : usual,
    ranked,
  }
}

function orderFrom(from: BitReader): number[][] {
  return Array.from({ length: from.number(8) }, () =>
    Array.from({ length: from.number(8) }, () => from.number(8)),
  )
}

/** An order that was asked for and holds every code once, and none beside another where places are not shared. */
function fits(ranked: number[][], codes: readonly string[], ranks: AskedOfSlip['ranks']): boolean {
  if (ranks === undefined || ranked.some((place) => place.length === 0)) return false
  const order = ranked.map((place) => place.map((at) => codes[at] ?? ''))
  return rankingTrouble(order, { codes, ties: ranks === 'shared' }) === null
}

function answerOf(point: number, next: () => string): ReturnedAnswer {
  if (point === 0) return { value: null, why: next() }
  if (point <= 9) return { value: point }
  const value = Number(next())
  if (!Number.isFinite(value)) throw new RangeError('no number')
  return { value }
}
