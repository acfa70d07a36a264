/**
 * The most of each thing that one trial may hold. Far above what a kitchen does, and low enough that every check, table and
 * chart of a trial at its limits still answers at once.
 */
export const most = {
  levels: 12,
  changesOfLevel: 24,
  steps: 60,
  repeats: 48,
  ingredients: 60,
  preferments: 12,
  responses: 24,
  tasters: 240,
  flights: 60,
  sparePieces: 60,
  piecesOfBatch: 480,
  placesPerLoad: 240,
  pairsOfHands: 24,
  plannedSessions: 24,
  sessions: 60,
  /** Doughs of one session, those that were made again among them. */
  batches: 48,
  piecesOfSession: 1_500,
  plans: 20_000,
  events: 100_000,
  ballots: 100_000,
  photos: 5_000,
  kitchenThings: 1_000,
} as const
