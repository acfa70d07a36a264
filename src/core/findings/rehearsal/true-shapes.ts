/** The truths that a plan is rehearsed against: nothing, a rise, a best in between, a step, and a best at the last level. */
export const trueShapes = ['null', 'rise', 'inside', 'step', 'edge'] as const
export type TrueShape = (typeof trueShapes)[number]

/**
 * What each level adds for a shape of this size: the rise from first to last; the height of a parabola's top, in the middle, over its ends; the
 * step at the middle; for *edge* a rise that bends over and is steepest first, best at the last level.
 */
export function effectsOf(shape: TrueShape, levels: number, size: number): number[] {
  const at = (level: number) => level / (levels - 1)
  const effect: Record<TrueShape, (x: number) => number> = {
    null: () => 0,
    rise: (x) => size * x,
    inside: (x) => size * (1 - (2 * x - 1) ** 2),
    step: (x) => (x >= 0.5 ? size : 0),
    edge: (x) => size * (1 - (1 - x) ** 2),
  }
  return Array.from({ length: levels }, (_, level) => effect[shape](at(level)))
}
