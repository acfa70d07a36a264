/** A place in a JSON document as a JSON Pointer (RFC 6901): '' is the whole document. */
export function jsonPointer(path: readonly PropertyKey[]): string {
  return path.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
}
