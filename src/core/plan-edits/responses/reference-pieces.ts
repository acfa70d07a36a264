import type { AnswerScale } from '@/core/trial/response.ts'

type NinePoints = Extract<AnswerScale, { kind: 'nine-point' }>

/** A piece to compare with, and the point of the scale at which it stands. */
export type ReferencePiece = NonNullable<NinePoints['references']>[number]

/** Where the next reference piece begins to stand: between the ends and the middle first, at an end last. */
const begins = [7, 3, 5, 8, 2, 6, 4, 9, 1] as const

/** One reference piece more, still without a name; as it was where each point has one. */
export function withReference(scale: NinePoints): NinePoints {
  const before = scale.references ?? []
  const at = begins.find((point) => before.every((reference) => reference.at !== point))
  return at === undefined ? scale : { ...scale, references: [...before, { at, text: '' }] }
}

/** The reference piece at an index (from 0) changed. */
export function changedReference(
  scale: NinePoints,
  index: number,
  change: Partial<ReferencePiece>,
): NinePoints {
  const references = (scale.references ?? []).map((reference, at) =>
    at === index ? { ...reference, ...change } : reference,
  )
  return { ...scale, references }
}

/** Without the reference piece at an index (from 0). */
export function withoutReference(scale: NinePoints, index: number): NinePoints {
  const { references = [], ...bare } = scale
  const left = references.filter((_, at) => at !== index)
  return left.length === 0 ? bare : { ...bare, references: left }
}
