/** The inside of a tin, in centimetres: straight or wider at the top than at the bottom. */
export type TinShape =
  | {
      is: 'box'
      topLength: number
      topWidth: number
      bottomLength: number
      bottomWidth: number
      height: number
    }
  | { is: 'round'; topDiameter: number; bottomDiameter: number; height: number }
  /** Of any other form, filled with water to the brim and weighed: 1 g is 1 ml. */
  | { is: 'volume'; millilitres: number }

/** The inside of a flat pan, in centimetres. */
export type PanShape =
  | { is: 'rectangle'; length: number; width: number }
  | { is: 'circle'; diameter: number }
  | { is: 'area'; squareCentimetres: number }

/**
 * What a tin holds to its brim, ml, by the prismatoid rule h/6 · (top + 4 · middle + bottom), exact for straight and evenly
 * sloping sides (Heath, A History of Greek Mathematics, for Heron's form; from memory). Corners are taken as sharp.
 */
export function tinMillilitres(tin: TinShape): number {
  if (tin.is === 'volume') return tin.millilitres
  const [top, middle, bottom] =
    tin.is === 'box'
      ? [
          tin.topLength * tin.topWidth,
          ((tin.topLength + tin.bottomLength) / 2) * ((tin.topWidth + tin.bottomWidth) / 2),
          tin.bottomLength * tin.bottomWidth,
        ]
      : [
          circle(tin.topDiameter),
          circle((tin.topDiameter + tin.bottomDiameter) / 2),
          circle(tin.bottomDiameter),
        ]
  return (tin.height / 6) * (top + 4 * middle + bottom)
}

/** The floor of a pan, cm². */
export function panSquareCentimetres(pan: PanShape): number {
  if (pan.is === 'area') return pan.squareCentimetres
  return pan.is === 'rectangle' ? pan.length * pan.width : circle(pan.diameter)
}

const circle = (diameter: number) => (Math.PI * diameter ** 2) / 4
