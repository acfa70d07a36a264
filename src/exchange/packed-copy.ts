import { deflateSync, inflateSync } from 'fflate'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { bytesOfLinkText, linkTextOf } from '@/slip/link-text.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'

/** Characters of one piece: with its seal it stays under what the hub takes in one message. */
const pieceLength = 28_000

/** The most bytes that a copy may unpack to. */
const mostBytes = 32 * 1024 * 1024

/** A trial as the pieces in which it travels: its file's text, packed. Some hundred entries make one piece. */
export function piecesOfCopy(copy: WholeTrial): string[] {
  const packed = linkTextOf(deflateSync(new TextEncoder().encode(writeTrialFile(copy))))
  return packed.match(new RegExp(`.{1,${pieceLength}}`, 'g')) ?? []
}

/** The trial that such pieces stand for; null where they are none, or not sound. */
export function copyOfPieces(pieces: readonly string[]): WholeTrial | null {
  const packed = bytesOfLinkText(pieces.join(''))
  if (!packed) return null
  try {
    const bytes = inflateSync(packed)
    if (bytes.length > mostBytes) return null
    const read = readTrialFile(new TextDecoder().decode(bytes))
    return read.ok ? read.whole : null
  } catch {
    // What does not unpack is no copy; the next notice brings one.
    return null
  }
}
