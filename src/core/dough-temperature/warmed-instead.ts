import { type PlannedMix, waterOf } from './planned-mixes.ts'
import { pastLimits } from './water-limits.ts'

/** Cold ingredients that would spare the yeast its hot water if they stood in the room first. */
export interface WarmedInstead {
  /** Those at least 5 °C colder than the room, by name. */
  names: string[]
  roomCelsius: number
  /** The water this dough asks for then. */
  waterCelsius: number
}

const coldBy = 5

/** Null where the water is not too hot, or nothing in the bowl is cold. */
export function warmedInstead(
  mix: PlannedMix,
  water: number,
  wanted: number,
): WarmedInstead | null {
  const { bodies, limits } = mix
  const { celsius: roomCelsius } = bodies.room
  if (pastLimits(water, limits) <= 0) return null
  const isCold = ({ what, celsius }: PlannedMix['bodies']['parts'][number]) =>
    (what === 'ingredient' || what === 'preferment') && celsius <= roomCelsius - coldBy
  const names = bodies.parts.filter(isCold).map(({ name }) => name)
  if (names.length === 0) return null
  const parts = bodies.parts.map((one) => (isCold(one) ? { ...one, celsius: roomCelsius } : one))
  const waterCelsius = waterOf({ ...mix, bodies: { ...bodies, parts } }, wanted)
  return waterCelsius === null ? null : { names, roomCelsius, waterCelsius }
}
