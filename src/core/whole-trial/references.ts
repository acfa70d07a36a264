/** A place in a trial (JSON Pointer) and the id there that names nothing, or names twice what must be named once. */
export interface ReferenceTrouble {
  pointer: string
  names: string
}

/** Gathers what is wrong with the references of a trial, in the order they are met. */
export class References {
  readonly troubles: ReferenceTrouble[] = []

  /** The id must be one of those known; undefined and null name nothing and pass. */
  known(pointer: string, id: string | null | undefined, ids: ReadonlySet<string>): void {
    if (id !== undefined && id !== null && !ids.has(id)) this.troubles.push({ pointer, names: id })
  }

  /** The id must be exactly this one. */
  same(pointer: string, id: string, expected: string): void {
    if (id !== expected) this.troubles.push({ pointer, names: id })
  }

  /** No two items may carry the same id; the second is the trouble. */
  distinct(pointer: string, items: readonly { id: string }[]): void {
    this.distinctBy(
      pointer,
      'id',
      items.map((item) => item.id),
    )
  }

  /** No id may stand twice in a list of ids; the second is the trouble. */
  once(pointer: string, ids: readonly string[]): void {
    const seen = new Set<string>()
    for (const [index, id] of ids.entries()) {
      if (seen.has(id)) this.troubles.push({ pointer: `${pointer}/${index}`, names: id })
      seen.add(id)
    }
  }

  /** No two items may carry the same text in a field; the second is the trouble. */
  distinctBy(pointer: string, field: string, texts: readonly string[]): void {
    const seen = new Set<string>()
    for (const [index, text] of texts.entries()) {
      if (seen.has(text))
        this.troubles.push({ pointer: `${pointer}/${index}/${field}`, names: text })
      seen.add(text)
    }
  }
}

/** The ids of some records as a set. */
export const idsOf = (items: readonly { id: string }[]): ReadonlySet<string> =>
  new Set(items.map((item) => item.id))
