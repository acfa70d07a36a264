/** Codes from 0 up for labels, in order of first sight, with the labels they stand for. */
export function coded<Label>(labels: readonly Label[]): { codes: number[]; labels: Label[] } {
  const seen = [...new Set(labels)]
  return { codes: labels.map((label) => seen.indexOf(label)), labels: seen }
}
