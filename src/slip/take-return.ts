import type { BallotSlip } from './ballot-slip.ts'
import { bytesOfDigits } from './digits.ts'
import { bytesOfLinkText } from './link-text.ts'
import {
  type AskedOfSlip,
  headOfReturn,
  type ReturnSlip,
  readReturn,
  sealHolds,
} from './return-slip.ts'
import { slipKey } from './slip-key.ts'

/** A slip the host gave out: enough to know its return. */
export interface IssuedSlip
  extends Pick<BallotSlip, 'slot' | 'issue' | 'issuedMinute'>,
    AskedOfSlip {
  /** Null for the slip of everybody. */
  tasterId: string | null
}

/** What the host keeps of a tasting by slips. */
export interface HostOfSlips {
  tag: number
  secret: Uint8Array
  /** The newest issue of each slot. */
  issued: readonly IssuedSlip[]
}

/** A return that was taken before: whose it was, and how far it had come. */
export interface TakenReturn {
  tasterId: string
  nonce: number
  revision: number
}

export type ReturnRefusal =
  | 'not-a-return'
  | 'newer-version'
  | 'other-tasting'
  | 'altered'
  | 'stale'
  | 'does-not-fit'

export type ReadReturn =
  | { ok: true; back: ReturnSlip; issued: IssuedSlip }
  | { ok: false; reason: ReturnRefusal }

/** The bytes under a scanned code, a link or a file's text; null where it is none of them. */
export function bytesOfScan(text: string): Uint8Array | null {
  const trimmed = text.trim()
  const linked = /#\/back\/([A-Za-z0-9_-]+)/.exec(trimmed)?.[1]
  if (linked !== undefined) return bytesOfLinkText(linked)
  return bytesOfDigits(trimmed) ?? bytesOfLinkText(trimmed)
}

/**
 * Reads what came back, in this order: of this tasting; its seal whole, before anything is unpacked; not of a slip that was
 * given out anew since; and fitting what was asked. It shows mix-ups and damage. It does not show that a taster made up their
 * own answers, nor who held the phone.
 */
export function readBack(text: string, host: HostOfSlips): ReadReturn {
  const bytes = bytesOfScan(text)
  const head = bytes && headOfReturn(bytes)
  if (!bytes || !head) return { ok: false, reason: 'not-a-return' }
  if (head === 'newer-version') return { ok: false, reason: head }
  if (head.tag !== host.tag) return { ok: false, reason: 'other-tasting' }
  if (!sealHolds(bytes, slipKey(host.secret, head.slot, head.issue)))
    return { ok: false, reason: 'altered' }
  const issued = host.issued.find(({ slot }) => slot === head.slot)
  if (!issued) return { ok: false, reason: 'other-tasting' }
  if (head.issue < issued.issue) return { ok: false, reason: 'stale' }
  const back = readReturn(bytes, issued)
  return back ? { ok: true, back, issued } : { ok: false, reason: 'does-not-fit' }
}

/** How a return stands to what was taken before of the same taster. */
export type AgainstTaken = 'first' | 'already-in' | 'older' | 'replaces' | 'other-answers'

/** The same bytes, an older word, a later word of the same phone, or the answers of another phone for the same taster. */
export function againstTaken(
  { nonce, revision }: Pick<ReturnSlip, 'nonce' | 'revision'>,
  tasterId: string,
  taken: readonly TakenReturn[],
): AgainstTaken {
  const own = taken.filter((one) => one.tasterId === tasterId)
  if (own.length === 0) return 'first'
  const same = own.filter((one) => one.nonce === nonce)
  if (same.length === 0) return 'other-answers'
  const known = Math.max(...same.map((one) => one.revision))
  return revision === known ? 'already-in' : revision < known ? 'older' : 'replaces'
}

/**
 * At which place among their servings each of a return was tasted, by the places of their codes: from 1, or after as many as came in
 * `before` from another phone.
 */
export function tastedPositions(
  servings: ReturnSlip['servings'],
  before: number,
): ReadonlyMap<number, number> {
  return new Map(servings.map(({ place }, at) => [place, before + at + 1]))
}

/**
 * What looks odd about a return and is kept beside it: another order than dealt, where the slip holds its taster to that one
 * (`ownOrder`), or times that cannot be.
 */
export function oddOfReturn(
  { servings }: Pick<ReturnSlip, 'servings'>,
  ownOrder: boolean,
): ('out-of-order' | 'times')[] {
  const outOfOrder =
    ownOrder && servings.some(({ place }, index) => place < (servings[index - 1]?.place ?? -1))
  const times = servings.some(({ startedSeconds, sealedSeconds }) => sealedSeconds < startedSeconds)
  return [...(outOfOrder ? ['out-of-order' as const] : []), ...(times ? ['times' as const] : [])]
}
