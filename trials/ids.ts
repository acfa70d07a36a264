/** Ids of a sample: its own prefix and a running number, so that making it anew gives the same file. */
export function idsFor(prefix: string): () => string {
  let count = 0
  return () => {
    count += 1
    return `${prefix}-${String(count).padStart(4, '0')}`
  }
}
