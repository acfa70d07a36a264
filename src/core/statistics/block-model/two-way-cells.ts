/** Cells of a two-way table in the order of their blocks, every block and column linked to every other by a chain of cells. */
export type TwoWayCells = {
  y: Float64Array
  weight: Float64Array
  block: Int32Array
  column: Int32Array
  blockCount: number
  columnCount: number
}
