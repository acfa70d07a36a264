/**
 * A column that is 1 where the code is the one asked for, else 0.
 *
 * @example indicator(Int32Array.of(0, 2, 2), 2) // [0, 1, 1] (by hand)
 */
export function indicator(codes: Int32Array, wanted: number): Float64Array {
  const column = new Float64Array(codes.length)
  for (let i = 0; i < codes.length; i += 1) if (codes[i] === wanted) column[i] = 1
  return column
}
