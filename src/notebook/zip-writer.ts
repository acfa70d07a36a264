import { Zip, ZipDeflate, ZipPassThrough } from 'fflate'

/**
 * A zip made file by file. Everything is packed by synchronous calls: the library's own background workers are refused by
 * the page's policy and then never answer, so whoever has much to pack does it in a worker of the project's own.
 */
export function zipWriter(mtime: number) {
  const chunks: Uint8Array<ArrayBuffer>[] = []
  let failure: Error | null = null
  const zip = new Zip((error, chunk) => {
    if (error) failure = error
    else chunks.push(new Uint8Array(chunk))
  })
  return {
    /** Adds a file; one that is packed already, such as a picture, is put in as it is. */
    add(name: string, bytes: Uint8Array, packed = false): void {
      const file = packed ? new ZipPassThrough(name) : new ZipDeflate(name, { level: 6 })
      file.mtime = mtime
      zip.add(file)
      file.push(bytes, true)
    },
    end(): Blob {
      zip.end()
      if (failure) throw failure
      return new Blob(chunks, { type: 'application/zip' })
    },
  }
}
