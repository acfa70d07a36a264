/**
 * Orders for comparing `lines` things so that each stands at each position, and each comes directly after each other one,
 * equally often: once in `lines` rows for an even number, twice in 2 × `lines` rows for an odd one. Rows of 0 … lines − 1.
 * First row 0, 1, n−1, 2, n−2, …; the others add 1 modulo n; for odd n the mirrored rows follow.
 * Williams 1949, Australian Journal of Scientific Research A 2:149, from memory; the properties are tested.
 */
export function williamsDesign(lines: number): number[][] {
  if (!Number.isInteger(lines) || lines < 1) throw new Error(`no orders for ${lines} lines`)
  const first = Array.from({ length: lines }, (_, position) =>
    position % 2 === 1 ? (position + 1) / 2 : (lines - position / 2) % lines,
  )
  const rows = first.map((_, shift) => first.map((line) => (line + shift) % lines))
  return lines % 2 === 0 || lines === 1 ? rows : [...rows, ...rows.map((row) => row.toReversed())]
}
