import { gramsDecimals, massDecimals, massFigure } from '@/core/units/mass-text.ts'
import type { SheetRow, WeighSheet } from './weigh-sheet.ts'

/** What one lidded cup holds. */
export interface Cup {
  levelId: string
  grams: number
  text: string
}

export type CupSheet =
  | {
      ok: true
      /** The line that differs between the doughs: a share that is the same for all, the rest in cups. */
      row: SheetRow
      commonGrams: number
      /** The common share as the scale shows it. */
      commonText: string
      cups: Cup[]
      /** The weigh sheet with the same grams for all, the common share in place of the line. */
      same: WeighSheet
    }
  | { ok: false; reason: 'nothing-differs' | 'more-differs' | 'one-dough' }

/**
 * Parts a weigh sheet so that whoever weighs the doughs does not see which is which: all lines alike but one, and of that one a
 * common share for all and what is beyond it in a lidded cup for each level. The smallest cup holds about a quarter of the
 * spread or more, so that none is empty, and the common share is round (own rule). Refused where more than one line differs,
 * as it does when the dough or the piece is held instead of the flour, and where one dough serves all levels.
 */
export function cupSheet(sheet: WeighSheet): CupSheet {
  if (sheet.batches.some(({ levelId }) => levelId === null))
    return { ok: false, reason: 'one-dough' }
  const differing = sheet.rows.filter(({ cells }) => !alike(cells))
  const [row] = differing
  if (!row) return { ok: false, reason: 'nothing-differs' }
  if (differing.length > 1 || row.what !== 'ingredient')
    return { ok: false, reason: 'more-differs' }
  const grams = row.cells.map((cell) => cell?.grams ?? 0)
  const least = Math.min(...grams)
  const spread = Math.max(...grams) - least
  const step = 10 ** Math.floor(Math.log10(spread))
  const commonGrams = Math.max(0, Math.floor((least - spread / 4) / step) * step)
  const [cell] = row.cells.flatMap((each) => each ?? [])
  const finest = (of: typeof gramsDecimals) =>
    Math.max(...grams.map((each) => of(each - commonGrams, cell?.resolutionGrams ?? null)))
  const [decimals, shownDecimals] = [finest(gramsDecimals), finest(massDecimals)]
  const written = (value: number) => Number(value.toFixed(decimals))
  const common = written(commonGrams)
  const cups = sheet.batches.flatMap(({ levelId }, at): Cup[] => {
    if (levelId === null) return []
    const own = written((grams[at] ?? 0) - common)
    return [{ levelId, grams: own, text: massFigure(own, shownDecimals) }]
  })
  const same: WeighSheet = {
    ...sheet,
    rows: sheet.rows.flatMap((each) => {
      if (each !== row) return [each]
      if (common === 0) return []
      const cells = each.cells.map((own) => {
        const like = own ?? cell
        return like ? { ...like, grams: common, targetGrams: common } : null
      })
      return [{ ...each, name: `${row.name}, the same for all`, cells }]
    }),
  }
  return {
    ok: true,
    row,
    commonGrams: common,
    commonText: massFigure(common, shownDecimals),
    cups,
    same,
  }
}

/** Less than any scale shows: two weights this close are the same. */
const leastGrams = 1e-6

function alike(cells: SheetRow['cells']): boolean {
  const [first] = cells
  return cells.every(
    (cell) =>
      cell?.name === first?.name && Math.abs((cell?.grams ?? 0) - (first?.grams ?? 0)) < leastGrams,
  )
}
