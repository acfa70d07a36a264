/** A column parted by a code from 0 to `parts` - 1, the values of each part in their order; rows of another code are left out. */
export function parted(column: Float64Array, codes: Int32Array, parts: number): Float64Array[] {
  const counts = new Int32Array(parts)
  for (let row = 0; row < codes.length; row += 1) {
    const code = codes[row] as number
    counts[code] = (counts[code] as number) + 1
  }
  const values = Array.from(counts, (count) => new Float64Array(count))
  counts.fill(0)
  for (let row = 0; row < codes.length; row += 1) {
    const code = codes[row] as number
    const part = values[code]
    if (!part) continue
    part[counts[code] as number] = column[row] as number
    counts[code] = (counts[code] as number) + 1
  }
  return values
}
