/** What can be logged about the dough or piece in front, besides its steps. */
export type EntryKind =
  | 'weigh'
  | 'temperature'
  | 'rise'
  | 'answers'
  | 'worked-in'
  | 'pieces'
  | 'failure'
  | 'photo'
  | 'note'

export const entryNames: Record<EntryKind, string> = {
  weigh: 'Weigh',
  temperature: 'Temperature',
  rise: 'Rise',
  answers: 'Handling',
  'worked-in': 'Worked in',
  pieces: 'Pieces',
  failure: 'Failure',
  photo: 'Photo',
  note: 'Note',
}
