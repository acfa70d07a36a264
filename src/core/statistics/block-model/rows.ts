/**
 * Rows of one response: `block` and `level` are codes from 0 up, one for each row. Without blocks every code is 0.
 * All values are finite numbers; who has missing ones leaves those rows out.
 */
export type LevelRows = {
  y: ArrayLike<number>
  block: ArrayLike<number>
  level: ArrayLike<number>
  blockCount: number
  levelCount: number
}

/** What no computation can mend: a value that is no number, a code out of range, columns of unequal length. Throws. */
export function insistOnRows(rows: LevelRows): void {
  const { y, block, level } = rows
  if (block.length !== y.length || level.length !== y.length) {
    throw new RangeError('y, block and level must have one entry for each row')
  }
  for (let i = 0; i < y.length; i += 1) {
    if (!Number.isFinite(y[i])) throw new RangeError(`row ${i} has no finite value`)
    if (!isCode(block[i], rows.blockCount)) throw new RangeError(`row ${i} has no block`)
    if (!isCode(level[i], rows.levelCount)) throw new RangeError(`row ${i} has no level`)
  }
}

function isCode(code: number | undefined, count: number): boolean {
  return Number.isInteger(code) && (code as number) >= 0 && (code as number) < count
}
