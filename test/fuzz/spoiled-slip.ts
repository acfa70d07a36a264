import { type Chance, wholeBetween } from '@/core/design/chance.ts'
import { bytesOfSlip, readSlip } from '@/slip/ballot-slip.ts'
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

/**
 * A spoiled slip or return. As it is, a reader must refuse it; with its check or seal made anew, as by ill will, it may be read
 * or refused, and nothing is thrown. Throws where that does not hold.
 */
export function spoiledSlip(chance: Chance): 'refused' | 'answered' {
  const slip = madeSlip(wholeBetween(chance, 1, 20), wholeBetween(chance, 1, 4))
  const host = hostOf(slip)
  if (wholeBetween(chance, 1, 2) === 1) {
    const whole = bytesOfSlip(slip)
    const changed = spoiled(chance, whole)
    if (linkTextOf(changed) !== linkTextOf(whole) && readSlip(changed).ok)
      throw new Error('a spoiled slip was taken')
    const body = spoiled(chance, whole.slice(0, -4))
    return readSlip(Uint8Array.from([...body, ...slipCheck(body)])).ok ? 'answered' : 'refused'
  }
  const whole = bytesOfReturn(madeReturn(slip), slip.key)
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
  return 'answered'
}
