import { deflateSync, inflateSync } from 'fflate'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { bytesOfLinkText, linkTextOf } from '@/slip/link-text.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'

/** Characters of one piece: with its seal it stays under what the hub takes in one message. */
const pieceLength = 28_000

/** The most bytes that a copy may unpack to. */
const mostBytes = 32 * 1024 * 1024

/** A text packed, in signs that stand in a message. */
export const packedText = (text: string): string =>
  linkTextOf(deflateSync(new TextEncoder().encode(text)))

/** The text that was packed so; null where it is none, or not sound. */
export function textOfPacked(packed: string): string | null {
  const bytes = bytesOfLinkText(packed)
  if (!bytes) return null
  try {
    const text = inflateSync(bytes)
    return text.length > mostBytes ? null : new TextDecoder().decode(text)
  } catch {
    // What does not unpack says no more than that.
    return null
  }
}

/** A trial as the pieces in which it travels: its file's text, packed. Some hundred entries make one piece. */
export function piecesOfCopy(copy: WholeTrial): string[] {
  return packedText(writeTrialFile(copy)).match(new RegExp(`.{1,${pieceLength}}`, 'g')) ?? []
}

/** The trial that such pieces stand for; null where they are none, or not sound. */
export function copyOfPieces(pieces: readonly string[]): WholeTrial | null {
  const text = textOfPacked(pieces.join(''))
  if (text === null) return null
  const read = readTrialFile(text)
  return read.ok ? read.whole : null
}
