import { Matrix, QrDecomposition } from 'ml-matrix'

const chunkRows = 400

/**
 * The triangle R of a Householder QR decomposition of some columns, by the kept library. The last column is the response, so
 * that R holds everything a fit needs: the last column of R is Qᵀy and its lowest entry the length of the residual.
 *
 * Long columns are decomposed in chunks whose triangles are stacked and decomposed again (Demmel et al. 2012,
 * SIAM J Sci Comput 34:A206; from memory): the same orthogonal reduction, in time that grows with the rows alone.
 * Columns all of one length; answers rows of R.
 */
export function triangularFactor(columns: readonly Float64Array[]): number[][] {
  const rows = columns[0]?.length ?? 0
  let triangle: number[][] = []
  for (let from = 0; from < rows || from === 0; from += chunkRows) {
    const to = Math.min(rows, from + chunkRows)
    const height = Math.max(columns.length, triangle.length + to - from)
    const stacked = new Matrix(height, columns.length)
    for (const [i, row] of triangle.entries()) stacked.setRow(i, row)
    const shift = triangle.length - from
    for (let j = 0; j < columns.length; j += 1) {
      const column = columns[j] as Float64Array
      for (let i = from; i < to; i += 1) stacked.set(shift + i, j, column[i] as number)
    }
    triangle = new QrDecomposition(stacked).upperTriangularMatrix.to2DArray()
  }
  return triangle
}
