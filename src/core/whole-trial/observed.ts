/** Where a value belongs. Null where it belongs to no flight, piece, taster or position. */
export interface Cell {
  sessionId: string
  flightId: string | null
  batchId: string
  letter: string
  pieceId: string | null
  levelId: string
  tasterId: string | null
  /** Among all servings of the taster, from 1. */
  position: number | null
  /** Among those of the same flight, from 1. */
  positionInFlight: number | null
  /** From the piece's bake-out to the start of the ballot. */
  minutesSinceOven: number | null
  responseId: string
}

export interface Observation extends Cell {
  value: number
}

/** A cell that should have had a value: why it has none. */
export interface Gap extends Cell {
  because:
    | 'stuck'
    | 'torn'
    | 'burnt'
    | 'gummy'
    | 'rescued'
    | 'not-served'
    | 'other'
    | 'declined'
    | 'left'
    | 'no-answer'
    /** The taster knows which is which, and this asks what they like. */
    | 'knows'
  why: string | null
}

export interface Observed {
  rows: Observation[]
  gaps: Gap[]
}
