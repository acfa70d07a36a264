/** What a column can stand for, besides a response. A replicate is a dough or loaf made again, in no block. */
export const csvRoles = [
  'session',
  'flight',
  'batch',
  'piece',
  'replicate',
  'level',
  'taster',
  'position',
  'minutes',
] as const

export type CsvRole = (typeof csvRoles)[number]
