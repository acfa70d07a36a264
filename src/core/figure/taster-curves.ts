import { type AxisLevel, levelAxis } from './level-axis.ts'

export interface TasterCurve {
  tasterId: string
  /** In axis order; levels that this taster never scored are left out. */
  points: { levelId: string; at: number; mean: number; n: number }[]
  /** The level with this taster's highest mean (lowest, where lower is better); null on a tie or without scores. */
  bestLevelId: string | null
}

/** Each taster's own means over the levels, so that a panel that disagrees is seen and not averaged away. */
export function tasterCurves(
  levels: readonly AxisLevel[],
  rows: readonly { levelId: string; tasterId: string | null; value: number }[],
  better: 'higher' | 'lower' | 'target' | 'neither',
  target: number | null = null,
): TasterCurve[] {
  const axis = levelAxis(levels)
  const tasterIds = [...new Set(rows.map((row) => row.tasterId).filter((id) => id !== null))]
  return tasterIds.map((tasterId) => {
    const points = axis.positions.flatMap(({ levelId, at }) => {
      const values = rows
        .filter((row) => row.tasterId === tasterId && row.levelId === levelId)
        .map((row) => row.value)
      return values.length === 0
        ? []
        : [
            {
              levelId,
              at,
              mean: values.reduce((sum, value) => sum + value, 0) / values.length,
              n: values.length,
            },
          ]
    })
    return { tasterId, points, bestLevelId: bestOf(points, better, target) }
  })
}

function bestOf(
  points: TasterCurve['points'],
  better: 'higher' | 'lower' | 'target' | 'neither',
  target: number | null,
): string | null {
  if (better === 'neither' || points.length === 0) return null
  const worth = (mean: number) =>
    better === 'target' ? -Math.abs(mean - (target ?? 0)) : better === 'lower' ? -mean : mean
  const most = Math.max(...points.map((point) => worth(point.mean)))
  const winners = points.filter((point) => most - worth(point.mean) < 1e-10)
  return winners.length === 1 ? (winners[0]?.levelId ?? null) : null
}
