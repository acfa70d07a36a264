/** Share of a column's squared length below which what is left of it after projection counts as rounding. */
const dustShare = 1e-10

/**
 * The part of some columns that a basis does not reach yet, as new orthonormal vectors: Gram and Schmidt's way, each column
 * projected twice so that rounding cannot tilt it. A column that the others already make adds nothing. The basis is not
 * changed; its vectors and the columns have one entry a row.
 */
export function orthonormalBeyond(
  basis: readonly Float64Array[],
  columns: readonly Float64Array[],
): Float64Array[] {
  const added: Float64Array[] = []
  for (const column of columns) {
    const rest = Float64Array.from(column)
    const whole = dot(rest, rest)
    if (!(whole > 0)) continue
    for (let pass = 0; pass < 2; pass += 1) {
      for (const one of basis) takeAway(rest, one)
      for (const one of added) takeAway(rest, one)
    }
    const left = dot(rest, rest)
    if (left <= dustShare * whole) continue
    const length = Math.sqrt(left)
    added.push(rest.map((value) => value / length))
  }
  return added
}

/** Sum of the products entry by entry; the vectors are of one length. */
export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let row = 0; row < a.length; row += 1) sum += (a[row] as number) * (b[row] as number)
  return sum
}

function takeAway(rest: Float64Array, unit: Float64Array): void {
  const along = dot(rest, unit)
  for (let row = 0; row < rest.length; row += 1)
    rest[row] = (rest[row] as number) - along * (unit[row] as number)
}
