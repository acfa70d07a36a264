import type { PairRow } from './pair-picture.ts'
import { wordsInLines } from './words-in-lines.ts'

/** How large a picture of pairs is drawn, all in its own pixels. */
export interface PairDrawing {
  widthPixels: number
  glyphPixels: number
  linePixels: number
  /** Of a row whose name stands in one line beside its interval. */
  rowPixels: number
  /** The widest column that names may take beside the intervals; a longer one stands over its own. */
  widestNamesPixels: number
}

export interface PairPlaces {
  /** Names stand over their intervals, from edge to edge, instead of beside them. */
  namesAbove: boolean
  /** In the order of the rows, from the top of the first downwards. */
  places: { nameLines: string[]; topPixels: number; heightPixels: number; middlePixels: number }[]
  heightPixels: number
}

/** The name of a pair, from which level to which. */
export const pairName = ({ a, b }: Pick<PairRow, 'a' | 'b'>) => `${a} → ${b}`

/**
 * Where each pair of a picture stands, so that its name is whole and touches nothing: beside its interval where every name fits
 * there, else in as many lines as it needs over it.
 */
export function pairPlaces(rows: readonly PairRow[], drawing: PairDrawing): PairPlaces {
  const { widthPixels, glyphPixels, linePixels, rowPixels, widestNamesPixels } = drawing
  const names = rows.map(pairName)
  const namesAbove = names.some((name) => name.length * glyphPixels > widestNamesPixels)
  let topPixels = 0
  const places = names.map((name) => {
    const nameLines = namesAbove ? wordsInLines(name, widthPixels / glyphPixels) : [name]
    const heightPixels = rowPixels + (namesAbove ? nameLines.length * linePixels : 0)
    const place = {
      ...{ nameLines, topPixels, heightPixels },
      middlePixels: topPixels + heightPixels - rowPixels / 2,
    }
    topPixels += heightPixels
    return place
  })
  return { namesAbove, places, heightPixels: topPixels }
}
