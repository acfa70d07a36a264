import { type Unzipped, unzipSync } from 'fflate'

/** A file of a zip: its bytes, or undefined where it is missing or its packed bytes are broken. */
export interface ZipReader {
  names: string[]
  /** Several files at once: the list of the zip is walked once for all of them. */
  read: (names: readonly string[]) => Record<string, Uint8Array | undefined>
}

/** Reads a zip piece by piece, by synchronous calls; undefined when it is none, or was cut short. */
export function zipReader(bytes: Uint8Array): ZipReader | undefined {
  const names: string[] = []
  const unzipped = (wanted: (name: string) => boolean): Unzipped | undefined => {
    try {
      return unzipSync(bytes, { filter: ({ name }) => wanted(name) })
    } catch {
      return undefined
    }
  }
  const listed = unzipped((name) => {
    names.push(name)
    return false
  })
  if (!listed || names.length === 0) return undefined
  return {
    names,
    read: (wanted) => {
      const together = new Set(wanted)
      const all = unzipped((name) => together.has(name))
      if (all) return all
      // One of them is broken: each for itself tells which.
      return Object.fromEntries(wanted.map((one) => [one, unzipped((name) => name === one)?.[one]]))
    },
  }
}
