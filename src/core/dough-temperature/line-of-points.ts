/** A straight line by least squares: y = meanY + slope × (x − meanX); the slope's standard error from what is left of n − 2. */
export interface PointLine {
  slope: number
  slopeError: number
  meanX: number
  meanY: number
}

/** Null below three points, or where all stand at one x. */
export function lineOfPoints(points: readonly { x: number; y: number }[]): PointLine | null {
  const meanX = meanOf(points.map(({ x }) => x))
  const meanY = meanOf(points.map(({ y }) => y))
  const across = points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0)
  if (points.length < 3 || across === 0) return null
  const slope = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0) / across
  const left = points.reduce((sum, { x, y }) => sum + (y - meanY - slope * (x - meanX)) ** 2, 0)
  return { slope, slopeError: Math.sqrt(left / (points.length - 2) / across), meanX, meanY }
}

/** Arithmetic mean; not a number of nothing. */
export function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}
