/** How figures are written and read for one person: what is kept is metric, with the point, whatever stands here. */
export interface Manner {
  mass: 'gram' | 'ounce'
  temperature: 'celsius' | 'fahrenheit'
  hours: '24' | '12'
  decimal: 'point' | 'comma'
}

/** The manner of whatever machines read, and of everybody who chose no other. */
export const plainManner: Manner = {
  mass: 'gram',
  temperature: 'celsius',
  hours: '24',
  decimal: 'point',
}

let inUse = plainManner

/** The manner in which figures are written now. */
export function manner(): Manner {
  return inUse
}

/** From here on figures are written so: said once at the start of a face, and again when the person chooses otherwise. */
export function writeAs(chosen: Manner): void {
  inUse = chosen
}

/** What `write` makes, written in a manner of its own: a table for machines, a report in the units of whoever gets it. */
export function writtenAs<Made>(chosen: Manner, write: () => Made): Made {
  const before = inUse
  inUse = chosen
  try {
    return write()
  } finally {
    inUse = before
  }
}
