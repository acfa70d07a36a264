import {
  type PanShape,
  panSquareCentimetres,
  type TinShape,
  tinMillilitres,
} from './pan-geometry.ts'

/** The same pan said in another form: as large as it was, a usual side where one is to be thought of. */
export function panInForm(is: PanShape['is'], before: PanShape): PanShape {
  const area = panSquareCentimetres(before)
  if (is === before.is) return before
  if (is === 'area') return { is, squareCentimetres: tenth(area) }
  if (is === 'circle') return { is, diameter: tenth(2 * Math.sqrt(area / Math.PI)) }
  const width = tenth(Math.sqrt(area * 0.75))
  return { is, length: tenth(area / width), width }
}

/** The same tin said in another form, holding as much: straight sides of a usual height where some are to be thought of. */
export function tinInForm(is: TinShape['is'], before: TinShape): TinShape {
  if (is === before.is) return before
  const millilitres = tinMillilitres(before)
  if (is === 'volume') return { is, millilitres: tenth(millilitres) }
  const height = before.is === 'volume' ? 9 : before.height
  const floor = millilitres / height
  if (is === 'round') {
    const across = tenth(2 * Math.sqrt(floor / Math.PI))
    return { is, topDiameter: across, bottomDiameter: across, height }
  }
  const width = tenth(Math.sqrt(floor / 3))
  const length = tenth(floor / width)
  return {
    is,
    topLength: length,
    topWidth: width,
    bottomLength: length,
    bottomWidth: width,
    height,
  }
}

/** To a millimetre (of an area or volume, a tenth), and never nothing. */
const tenth = (value: number) => Math.max(0.5, Math.round(value * 10) / 10)
