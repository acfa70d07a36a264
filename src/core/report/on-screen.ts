import type { ChartBlock } from './report-block.ts'

/** A chart as a screen draws it: in the dark its levels take the dark ramp, as everywhere else; printed they are light again. */
export function onScreen(block: ChartBlock): ChartBlock {
  const paints = new Map(
    [...block.paints].map(([levelId, paint]) => {
      const dark = block.darkPaints.get(levelId)
      return [levelId, dark ? { ...paint, fill: `light-dark(${paint.fill}, ${dark.fill})` } : paint]
    }),
  )
  return { ...block, paints }
}
