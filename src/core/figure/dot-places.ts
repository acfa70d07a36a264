/** A value of one level as it is to be drawn, with the height of its value in pixels. */
export interface DrawnValue {
  levelId: string
  heightPixels: number
}

/** Where a dot stands beside its level's place and its value's height, and how large all dots are. */
export interface DotPlaces {
  radiusPixels: number
  offsets: { across: number; up: number }[]
}

const largest = 4.6
const least = 1.4
const clear = 2

/**
 * Places for dots that can be counted: equal values of a level stand side by side in centred rows, values that lie closer than a dot
 * move aside until they are free. Dots shrink where a level's room is too narrow, and never fall out of it.
 *
 * @param values in any order; the places come in the same order
 * @param roomPixels the width a level's dots may take
 * @param stepPixels the height between neighbouring values of the scale, which rows of equal values may fill
 */
export function dotPlaces(
  values: readonly DrawnValue[],
  roomPixels: number,
  stepPixels: number,
): DotPlaces {
  for (let radius = largest; ; radius -= 0.4) {
    const offsets = laidOut(values, roomPixels, stepPixels, 2 * radius + clear)
    if (offsets) return { radiusPixels: radius, offsets }
    if (radius - 0.4 < least) return { radiusPixels: least, offsets: crowded(values, roomPixels) }
  }
}

type Offset = DotPlaces['offsets'][number]

function laidOut(
  values: readonly DrawnValue[],
  roomPixels: number,
  stepPixels: number,
  pitch: number,
): Offset[] | null {
  const places = new Array<Offset>(values.length)
  const abreast = Math.max(1, Math.floor((roomPixels + clear) / pitch))
  for (const level of grouped(values)) {
    const apart = level.every(
      (group, index) => index === 0 || group.height - (level[index - 1]?.height ?? 0) >= pitch,
    )
    const done = apart
      ? inRows(level, places, abreast, pitch, stepPixels)
      : movedAside(level, places, abreast, pitch)
    if (!done) return null
  }
  return places
}

interface Equal {
  height: number
  indexes: number[]
}

/** The values of each level, equal ones together, lowest first. */
function grouped(values: readonly DrawnValue[]): Equal[][] {
  const levels = new Map<string, Map<number, number[]>>()
  values.forEach(({ levelId, heightPixels }, index) => {
    const level = levels.get(levelId) ?? new Map<number, number[]>()
    levels.set(levelId, level)
    level.set(heightPixels, [...(level.get(heightPixels) ?? []), index])
  })
  return [...levels.values()].map((level) =>
    [...level]
      .map(([height, indexes]) => ({ height, indexes }))
      .toSorted((a, b) => a.height - b.height),
  )
}

/** Rows as even as can be, one above the other around the value. */
function inRows(
  level: readonly Equal[],
  places: Offset[],
  abreast: number,
  pitch: number,
  stepPixels: number,
): boolean {
  for (const { indexes } of level) {
    const rows = Math.ceil(indexes.length / abreast)
    if (rows > 1 && rows * pitch > stepPixels) return false
    const each = Math.ceil(indexes.length / rows)
    indexes.forEach((index, at) => {
      const row = Math.floor(at / each)
      const inRow = Math.min(each, indexes.length - row * each)
      places[index] = {
        across: ((at % each) - (inRow - 1) / 2) * pitch,
        up: ((rows - 1) / 2 - row) * pitch,
      }
    })
  }
  return true
}

/** Each takes the free place nearest to the middle at its own height. */
function movedAside(
  level: readonly Equal[],
  places: Offset[],
  abreast: number,
  pitch: number,
): boolean {
  const stand: { across: number; height: number }[] = []
  for (const { height, indexes } of level)
    for (const index of indexes) {
      const across = nearestFree(stand, height, abreast, pitch)
      if (across === null) return false
      stand.push({ across, height })
      places[index] = { across, up: 0 }
    }
  return true
}

function nearestFree(
  stand: readonly { across: number; height: number }[],
  height: number,
  abreast: number,
  pitch: number,
): number | null {
  const close = stand.filter((one) => height - one.height < pitch)
  for (let step = 0; step < abreast; step += 1) {
    const across = (step % 2 === 0 ? step / 2 : -(step + 1) / 2) * pitch
    if (close.every((one) => Math.hypot(one.across - across, one.height - height) >= pitch - 1e-9))
      return across
  }
  return null
}

/** More than can be counted: spread over the room evenly. */
function crowded(values: readonly DrawnValue[], roomPixels: number): Offset[] {
  const seen = new Map<string, number>()
  const golden = (Math.sqrt(5) - 1) / 2
  return values.map(({ levelId }) => {
    const count = (seen.get(levelId) ?? 0) + 1
    seen.set(levelId, count)
    return { across: (((count * golden) % 1) - 0.5) * roomPixels, up: 0 }
  })
}
