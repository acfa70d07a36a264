import { type Chance, shuffled, wholeBetween } from '@/core/design/chance.ts'
import { type BallotSlip, bytesOfSlip, readSlip } from '@/slip/ballot-slip.ts'
import { digitsOf } from '@/slip/digits.ts'
import { linkTextOf } from '@/slip/link-text.ts'
import { bytesOfReturn } from '@/slip/return-slip.ts'
import { returnSeal, slipCheck } from '@/slip/slip-key.ts'
import { readBack } from '@/slip/take-return.ts'
import { hostOf, madeReturn, madeSlip } from '../slip/made-slip.ts'

/** Bytes with some turned, cut off, doubled or put in. */
function spoiled(chance: Chance, bytes: Uint8Array): Uint8Array {
  const out = [...bytes]
  for (let turns = wholeBetween(chance, 1, 4); turns > 0; turns -= 1) {
    const at = wholeBetween(chance, 0, Math.max(0, out.length - 1))
    const how = wholeBetween(chance, 1, 4)
    if (how === 1) out[at] = wholeBetween(chance, 0, 255)
    else if (how === 2) out.splice(at, wholeBetween(chance, 1, 9))
    else if (how === 3) out.splice(at, 0, wholeBetween(chance, 0, 255))
    else out.push(...out.slice(at, at + 20))
  }
  return Uint8Array.from(out)
}

/** A slip of the first version, or of the second: an order, words of the baker's own, or both. */
function slipOfEither(chance: Chance): BallotSlip {
  const size = [wholeBetween(chance, 1, 20), wholeBetween(chance, 1, 4)] as const
  const asks = wholeBetween(chance, 1, 2) === 1 ? { asks: 'Crispest first, please.' } : {}
  const ranking = { ties: wholeBetween(chance, 1, 2) === 1, ...asks }
  const tellApart = { test: 'duo-trio', asks: 'Which one tastes as the first?' } as const
  const how = wholeBetween(chance, 1, 4)
  if (how === 1) return madeSlip(...size)
  return madeSlip(...size, {
    ...(how === 2 ? {} : { ranking }),
    ...(how === 3 ? {} : { tellApart }),
  })
}

/** An order of so many samples by their places, some of them shared where that may be. */
function someOrder(chance: Chance, count: number, ties: boolean): number[][] {
  const places = shuffled(
    chance,
    Array.from({ length: count }, (_, at) => at),
  )
  const ranked: number[][] = []
  for (const at of places) {
    const last = ranked.at(-1)
    if (ties && last && wholeBetween(chance, 1, 3) === 1) last.push(at)
    else ranked.push([at])
  }
  return ranked
}

/** Whether an order names each sample of its slip once, and shares places only where it may. */
function fits(ranked: readonly (readonly number[])[], { codes, ranking }: BallotSlip): boolean {
  const named = ranked.flat()
  return (
    ranking !== null &&
    named.length === codes.length &&
    new Set(named).size === named.length &&
    named.every((at) => codes[at] !== undefined) &&
    (ranking.ties || ranked.every((place) => place.length === 1))
  )
}

/**
 * A spoiled slip or return. As it is, a reader must refuse it; with its check or seal made anew, as by ill will, it may be read
 * or refused, and nothing is thrown. Throws where that does not hold.
 */
export function spoiledSlip(chance: Chance): 'refused' | 'answered' {
  const slip = slipOfEither(chance)
  const host = hostOf(slip)
  if (wholeBetween(chance, 1, 2) === 1) {
    const whole = bytesOfSlip(slip)
    const changed = spoiled(chance, whole)
    if (linkTextOf(changed) !== linkTextOf(whole) && readSlip(changed).ok)
      throw new Error('a spoiled slip was taken')
    const body = spoiled(chance, whole.slice(0, -4))
    return readSlip(Uint8Array.from([...body, ...slipCheck(body)])).ok ? 'answered' : 'refused'
  }
  const ranked = slip.ranking ? someOrder(chance, slip.codes.length, slip.ranking.ties) : null
  const whole = bytesOfReturn(madeReturn(slip, { ranked }), slip.key)
  const changed = spoiled(chance, whole)
  for (const text of [digitsOf(changed), linkTextOf(changed)])
    if (linkTextOf(changed) !== linkTextOf(whole) && readBack(text, host).ok)
      throw new Error('a spoiled return was taken')
  const body = spoiled(chance, whole.slice(0, -8))
  const forged = Uint8Array.from([...body, ...returnSeal(slip.key, body)])
  const read = readBack(digitsOf(forged), host)
  if (!read.ok) return 'refused'
  for (const { place, answers } of read.back.servings)
    if (slip.codes[place] === undefined || answers.some(({ value }) => Number.isNaN(value)))
      throw new Error('a return was taken that does not fit its slip')
  if (read.back.ranked && !fits(read.back.ranked, slip))
    throw new Error('an order was taken that does not fit its slip')
  return 'answered'
}
