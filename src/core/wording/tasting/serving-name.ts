import type { BlindServing, BlindSet } from '@/core/seal/blind/blind-view.ts'

/** What a serving goes by at the table: its code, or the plate it lies on where its taster shuffled the plates. */
export function servingName({ code, plate }: Pick<BlindServing, 'code' | 'plate'>): string {
  return plate === undefined ? code : `Plate ${plate}`
}

/** The same in the middle of a sentence: “plate 2”. */
export function servingInSentence(serving: Pick<BlindServing, 'code' | 'plate'>): string {
  return serving.plate === undefined ? serving.code : `plate ${serving.plate}`
}

/** What a sample of a set goes by, at its place among the codes. */
export function sampleName(
  { codes, onPlates }: Pick<BlindSet, 'codes' | 'onPlates'>,
  code: string,
): string {
  return servingName(onPlates ? { code, plate: codes.indexOf(code) + 1 } : { code })
}
