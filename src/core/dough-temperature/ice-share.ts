import { iceHeat, meltingHeat, waterHeat } from './heat-constants.ts'

export type IceShare =
  | { ok: true; share: number }
  | { ok: false; reason: 'tap-cold-enough' | 'more-than-all' | 'freezer-not-freezing' }

/**
 * Share of the water's mass to replace by ice so that tap water comes to a wanted temperature:
 * x = c_w (T_tap - T_w) / (c_w T_tap + 334 + 2.1 |T_ice|), T_ice the freezer's temperature. Closed balance: the ice takes the
 * place of the same mass of tap water. Refuses when none is needed, when ice alone would not do, or the freezer is above 0 °C.
 */
export function iceShare(tapCelsius: number, wantedCelsius: number, freezerCelsius = 0): IceShare {
  if (freezerCelsius > 0) return { ok: false, reason: 'freezer-not-freezing' }
  if (wantedCelsius >= tapCelsius) return { ok: false, reason: 'tap-cold-enough' }
  const takenPerKilogram = waterHeat * tapCelsius + meltingHeat + iceHeat * Math.abs(freezerCelsius)
  const share = (waterHeat * (tapCelsius - wantedCelsius)) / takenPerKilogram
  return share > 1 ? { ok: false, reason: 'more-than-all' } : { ok: true, share }
}
