import { buf as crc32 } from 'crc-32'
import { type UnzipFileInfo, unzipSync } from 'fflate'

/** A file of a zip: its bytes, or undefined where it is missing, or its bytes are not those that were packed. */
export interface ZipReader {
  names: string[]
  /** Several files at once: the list of the zip is walked once for all of them. */
  read: (names: readonly string[]) => Record<string, Uint8Array | undefined>
}

/** No file of a backup is larger unpacked, in bytes: what says so would only fill the memory. */
const mostBytes = 256 * 1024 * 1024

/** Reads a zip piece by piece, by synchronous calls; undefined when it is none, or was cut short. */
export function zipReader(bytes: Uint8Array): ZipReader | undefined {
  const unzipped = (wanted: (file: UnzipFileInfo) => boolean) => {
    try {
      return unzipSync(bytes, { filter: wanted })
    } catch {
      return undefined
    }
  }
  const names: string[] = []
  const listed = unzipped(({ name }) => {
    names.push(name)
    return false
  })
  if (!listed || names.length === 0) return undefined
  const checksums = listedChecksums(bytes)
  const sound = (name: string, unpacked: Uint8Array | undefined) =>
    unpacked && crc32(unpacked) >>> 0 === checksums.get(name) ? unpacked : undefined
  return {
    names,
    read: (wanted) => {
      if (wanted.length === 0) return {}
      const together = new Set(wanted)
      const all = unzipped((file) => together.has(file.name) && isCredible(file))
      // Where one of them is broken, each for itself tells which.
      const one = (name: string) =>
        all ?? unzipped((file) => file.name === name && isCredible(file))
      return Object.fromEntries(wanted.map((name) => [name, sound(name, one(name)?.[name])]))
    },
  }
}

/** Deflate packs no more than 1,032 bytes into one (RFC 1951: 258 bytes in two bits), so a file that claims more is broken. */
const isCredible = ({ size, originalSize }: UnzipFileInfo) =>
  originalSize <= mostBytes && originalSize <= 1032 * size + 1032

/**
 * The CRC-32 that the zip's list of contents gives for each file. Offsets by ISO/IEC 21320-1 and the .ZIP file format it
 * rests on (central directory header: signature 0x02014b50, CRC-32 at byte 16, lengths of name, extra field and comment at
 * 28, 30 and 32, name at 46; end record: 0x06054b50, offset of the list at 16), from memory; held by zips of another writer.
 */
function listedChecksums(bytes: Uint8Array): Map<string, number> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const found = new Map<string, number>()
  let end = bytes.length - 22
  while (end > 0 && view.getUint32(end, true) !== 0x06054b50) end -= 1
  let at = view.getUint32(end + 16, true)
  while (at + 46 <= bytes.length && view.getUint32(at, true) === 0x02014b50) {
    const nameBytes = view.getUint16(at + 28, true)
    const name = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameBytes))
    found.set(name, view.getUint32(at + 16, true))
    at += 46 + nameBytes + view.getUint16(at + 30, true) + view.getUint16(at + 32, true)
  }
  return found
}
