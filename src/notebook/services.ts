/** What a notebook is given: the clock (UTC milliseconds), the IANA zone, new ids, and seeds from 0 to 2^32 - 1. */
export interface NotebookServices {
  now: () => number
  zone: string
  newId: () => string
  newSeed: () => number
}
