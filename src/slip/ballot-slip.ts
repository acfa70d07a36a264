import type { BlindView, Question } from '@/core/seal/blind/blind-view.ts'
import type { RankingAsked } from '@/core/trial/at-table.ts'
import type { AnswerScale } from '@/core/trial/response.ts'
import { BitReader, BitWriter } from './bits.ts'
import { packedLines, unpackedLines } from './packed-text.ts'
import { sameBytes, sizes, slipCheck } from './slip-key.ts'

/** The slot of a slip for everybody: each taster picks their own initials. */
export const openSlot = 255

/** A question as a slip carries it: no id, it is known by its place. */
export type SlipQuestion = Omit<Question, 'responseId'>

/**
 * A ballot that travels to a taster's own phone: codes and questions in their order, and nothing that leads to a level, a
 * letter, a dough or the order of another taster. Tag and key are drawn fresh and lead to nothing in the trial.
 */
export interface BallotSlip {
  /** Which tasting it belongs to; drawn for it alone. */
  tag: number
  /** Which taster of the host's list, from 1; `openSlot` for all of them. */
  slot: number
  /** How often this slot was given out, from 0: an older one is stale. */
  issue: number
  /** Minutes since the epoch. */
  issuedMinute: number
  key: Uint8Array
  /** In the taster's own order; of an open slip in rising order, which says nothing. */
  codes: string[]
  /** Taken first, at their own seat, and not scored; null where there is none, or it comes to all at once. */
  warmUpCode: string | null
  rest: BlindView['rest']
  asksUsual: boolean
  /** Served as the oven gives them: another code than the next may stand on the table, and is then scored first. */
  asTheyCome: boolean
  sets: string[][]
  tellApart: BlindView['tellApart']
  /** Null where nothing is ranked. */
  ranking: RankingAsked | null
  allergens: string[]
  questions: SlipQuestion[]
}

/**
 * A slip of the first version has no ranking and no words of the baker's own, one of the second is served in its own order;
 * each is still written where it will do.
 */
const versions = { plain: 1, withOwnWords: 2, asTheyCome: 3 } as const
const tests = ['triangle', 'duo-trio', 'paired'] as const
const kinds = ['nine-point', 'just-about-right', 'measured'] as const

/** The bytes of a slip, its check at the end. */
export function bytesOfSlip(slip: BallotSlip): Uint8Array {
  const out = new BitWriter()
  const lines: string[] = [...slip.allergens]
  const version = versionOf(slip)
  out.number(version, 8)
  out.number(slip.tag, 32)
  out.number(slip.slot, 8)
  out.number(slip.issue, 8)
  out.number(slip.issuedMinute, 32)
  out.bytes(slip.key)
  const { restSeconds = 0, pauseAfter = 0, pauseSeconds = 0 } = slip.rest
  out.number(restSeconds, 12)
  out.number(pauseAfter, 11)
  out.number(pauseSeconds, 12)
  out.number(slip.asksUsual ? 1 : 0, 1)
  out.number(slip.warmUpCode === null ? 0 : Number(slip.warmUpCode), 10)
  out.number(slip.codes.length, 8)
  for (const code of slip.codes) out.number(Number(code), 10)
  writeSets(out, slip, lines)
  if (version >= versions.withOwnWords) writeOwnWords(out, slip, lines)
  out.number(slip.allergens.length, 5)
  out.number(slip.questions.length, 5)
  for (const question of slip.questions) writeQuestion(out, question, lines)
  const packed = packedLines(lines)
  out.number(packed.length, 16)
  out.bytes(packed)
  const bytes = out.done()
  return Uint8Array.from([...bytes, ...slipCheck(bytes)])
}

function versionOf({ ranking, tellApart, asTheyCome }: BallotSlip): number {
  if (asTheyCome) return versions.asTheyCome
  const plain = ranking === null && tellApart?.asks === undefined
  return plain ? versions.plain : versions.withOwnWords
}

function writeOwnWords(out: BitWriter, { ranking, tellApart }: BallotSlip, lines: string[]): void {
  out.number(ranking ? 1 : 0, 1)
  out.number(ranking?.ties ? 1 : 0, 1)
  for (const asks of [tellApart?.asks, ranking?.asks]) {
    out.number(asks === undefined ? 0 : 1, 1)
    if (asks !== undefined) lines.push(asks)
  }
}

function writeSets(out: BitWriter, { sets, tellApart }: BallotSlip, lines: string[]): void {
  out.number(tellApart ? tests.indexOf(tellApart.test) + 1 : 0, 2)
  if (!tellApart) return
  out.number(tellApart.attribute === undefined ? 0 : 1, 1)
  if (tellApart.attribute !== undefined) lines.push(tellApart.attribute)
  out.number(sets.length, 4)
  for (const codes of sets) for (const code of codes) out.number(Number(code), 10)
}

function writeQuestion(out: BitWriter, question: SlipQuestion, lines: string[]): void {
  const { name, scale, definition, liking } = question
  out.number(kinds.indexOf(scale.kind), 2)
  out.number(liking ? 1 : 0, 1)
  out.number(definition === null ? 0 : 1, 1)
  lines.push(name)
  if (definition !== null) lines.push(definition)
  if (scale.kind === 'nine-point')
    for (const words of [scale.anchors, scale.references ?? []]) {
      out.number(words.length, 4)
      for (const { at, text } of words) {
        out.number(at, 4)
        lines.push(text)
      }
    }
  else if (scale.kind === 'just-about-right') lines.push(scale.low, scale.high)
  else lines.push(scale.unitOfMeasure)
}

export type ReadSlip =
  | { ok: true; slip: BallotSlip }
  | { ok: false; reason: 'incomplete' | 'newer-version' | 'not-a-slip' }

/** Reads a slip back, whole or not at all. `incomplete`: its check fails, as of a link that was cut. */
export function readSlip(bytes: Uint8Array): ReadSlip {
  const body = bytes.slice(0, Math.max(0, bytes.length - sizes.check))
  if (body.length === 0) return { ok: false, reason: 'incomplete' }
  if (!sameBytes(slipCheck(body), bytes.slice(body.length)))
    return { ok: false, reason: 'incomplete' }
  const found = body[0] ?? 0
  if (found > versions.asTheyCome) return { ok: false, reason: 'newer-version' }
  if (found < versions.plain) return { ok: false, reason: 'not-a-slip' }
  try {
    const slip = slipOf(body)
    return slip ? { ok: true, slip } : { ok: false, reason: 'not-a-slip' }
  } catch {
    return { ok: false, reason: 'not-a-slip' }
  }
}

/** The slip in bytes whose check holds; null, or a throw, where they are none. */
function slipOf(body: Uint8Array): BallotSlip | null {
  const from = new BitReader(body)
  const version = from.number(8)
  const head = {
    tag: from.number(32),
    slot: from.number(8),
    issue: from.number(8),
    issuedMinute: from.number(32),
    key: from.bytes(sizes.key),
  }
  const rest = {
    restSeconds: from.number(12),
    pauseAfter: from.number(11),
    pauseSeconds: from.number(12),
  }
  const asksUsual = from.number(1) === 1
  const warmUp = from.number(10)
  const codes = Array.from({ length: from.number(8) }, () => codeFrom(from))
  const apart = setsFrom(from)
  const own = version >= versions.withOwnWords ? ownWordsFrom(from) : null
  const allergens = from.number(5)
  const read = Array.from({ length: from.number(5) }, () => questionFrom(from))
  const lines = unpackedLines(from.bytes(from.number(16)))
  if (!lines) return null
  let at = 0
  const next = () => {
    const line = lines[at]
    if (line === undefined) throw new RangeError('a line of text is missing')
    at += 1
    return line
  }
  const said = Array.from({ length: allergens }, next)
  const tellApart = apart.test
    ? {
        ...{ test: apart.test, ...(apart.named ? { attribute: next() } : {}) },
        ...(own?.setInWords ? { asks: next() } : {}),
      }
    : null
  const ranking = own?.ranks
    ? { ties: own.ties, ...(own.rankedInWords ? { asks: next() } : {}) }
    : null
  const questions = read.map((words) => words(next))
  return {
    ...head,
    codes,
    warmUpCode: warmUp === 0 ? null : String(warmUp),
    rest: {
      restSeconds: rest.restSeconds,
      pauseSeconds: rest.pauseSeconds,
      ...(rest.pauseAfter > 0 ? { pauseAfter: rest.pauseAfter } : {}),
    },
    asksUsual,
    asTheyCome: version === versions.asTheyCome,
    sets: apart.sets,
    tellApart,
    ranking,
    allergens: said,
    questions,
  }
}

function ownWordsFrom(from: BitReader) {
  const bit = () => from.number(1) === 1
  return { ranks: bit(), ties: bit(), setInWords: bit(), rankedInWords: bit() }
}

function codeFrom(from: BitReader): string {
  const code = from.number(10)
  if (code < 100 || code > 999) throw new RangeError('no serving code')
  return String(code)
}

function setsFrom(from: BitReader) {
  const test = tests[from.number(2) - 1] ?? null
  if (!test) return { test, named: false, sets: [] }
  const named = from.number(1) === 1
  const size = test === 'paired' ? 2 : 3
  const sets = Array.from({ length: from.number(4) }, () =>
    Array.from({ length: size }, () => codeFrom(from)),
  )
  return { test, named, sets }
}

/** A question whose words stand further on: answers what makes it whole once they are read. */
function questionFrom(from: BitReader): (next: () => string) => SlipQuestion {
  const kind = kinds[from.number(2)]
  if (!kind) throw new RangeError('no such scale')
  const liking = from.number(1) === 1
  const defined = from.number(1) === 1
  const points = () =>
    Array.from({ length: from.number(4) }, () => {
      const at = from.number(4)
      if (at < 1 || at > 9) throw new RangeError('no point of the scale')
      return at
    })
  const [anchors, references] = kind === 'nine-point' ? [points(), points()] : [[], []]
  return (next) => {
    const name = next()
    const definition = defined ? next() : null
    return { name, definition, liking, scale: scaleOf(kind, anchors, references, next) }
  }
}

function scaleOf(
  kind: (typeof kinds)[number],
  anchors: readonly number[],
  references: readonly number[],
  next: () => string,
): AnswerScale {
  if (kind === 'just-about-right') return { kind, low: next(), high: next() }
  if (kind === 'measured') return { kind, unitOfMeasure: next(), measure: 'own' }
  const words = (points: readonly number[]) => points.map((at) => ({ at, text: next() }))
  const own = words(anchors)
  const named = words(references)
  return { kind, anchors: own, ...(named.length > 0 ? { references: named } : {}) }
}
