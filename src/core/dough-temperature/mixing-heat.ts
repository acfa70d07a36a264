import type { MixingWay } from '@/core/kitchen/mixing-way.ts'

/** What a way of mixing does to a dough's warmth, per kg of flour. */
export interface MixingHeat {
  /** Heat that bowl, bench and air take or give for each degree between dough and room, kJ/(K kg). */
  roomHeat: number
  /** Work of mixing and warm hands, less what evaporates, kJ/kg. */
  kilojoulesPerKilogram: number
  /** How far a first dough may come out from what the balance says, °C. */
  giveOrTakeCelsius: number
}

/**
 * By hand: K 3.2 and e −7.0, fitted for this project to eleven published hand-mixed doughs of eight sources (0.3 to 1.5 kg of
 * flour, 5 to 15 minutes, open bowl; 0.46 °C rms, worst 0.78). On the bench: warm hands, +5 °C over six minutes, seen once; e is
 * what brings that about. Machines: K half of the hand's, an assumption, and e from the trade's friction factors at that K, each
 * good to 10 kJ/kg. A first dough is taken to be good to 2 °C, common practice.
 */
export const mixingHeats: Readonly<Record<MixingWay, MixingHeat>> = {
  hand: { roomHeat: 3.2, kilojoulesPerKilogram: -7, giveOrTakeCelsius: 2 },
  bench: { roomHeat: 3.2, kilojoulesPerKilogram: 32, giveOrTakeCelsius: 5 },
  gentle: { roomHeat: 1.6, kilojoulesPerKilogram: 0, giveOrTakeCelsius: 2 },
  stand: { roomHeat: 1.6, kilojoulesPerKilogram: 10, giveOrTakeCelsius: 2 },
  spiral: { roomHeat: 1.6, kilojoulesPerKilogram: 25, giveOrTakeCelsius: 2 },
}

/** A bowl that is entered stands among the bodies itself; this much of the room's share, kJ/(K kg), was the usual bowl's. */
export const bowlInRoomHeat = 0.8

/** After one logged dough a way of mixing is known to about this, °C: common practice. */
export const learnedGiveOrTakeCelsius = 1
