import type { MinutesEnds } from './proof-minutes.ts'

/** A batch as it leaves the mixer where water cannot bring all doughs to one temperature. Degrees in °C. */
export interface UnwateredDough {
  levelId: string | null
  label: string
  /** Water that brings this dough to the wanted temperature; null where it takes none at the mix. */
  waterCelsius: number | null
  /** The wanted temperature where there is water to reach it, else what the heat balance without water says. */
  doughCelsius: number
}

/** Doughs of which some or all take no water as such at the mix: milk alone, or all water in a preferment. */
export interface UnwateredDoughs {
  ok: false
  reason: 'no-water-at-mix'
  wantedDoughCelsius: number
  doughs: UnwateredDough[]
  /** Largest less smallest dough temperature, and the same in minutes of the planned warm time; null outside 15 to 34 °C. */
  spreadCelsius: number
  spreadMinutes: number | null
  spreadMinutesEnds: MinutesEnds | null
}
