import { normalTails } from '@/core/statistics/distributions/normal.ts'

/** The two-sided error kept over all looks: all comparisons, a one-sided bound, the expected and the surprising chain. */
export type TotalError = 0.05 | 0.1 | 0.04 | 0.01

/**
 * C of the early-strict rule, a row for 2 to 6 levels, a column for 2 to 8 sessions at most, by simulation of 400,000 trials
 * each for this project (Monte Carlo error .003 to .009), levels compared within sessions, looked at after every session from the second.
 */
const constants: Readonly<Record<TotalError, readonly (readonly number[])[]>> = {
  0.1: [
    [1.6438, 1.7598, 1.7969, 1.8144, 1.8278, 1.8389, 1.8451],
    [1.647, 1.7507, 1.7834, 1.7958, 1.8088, 1.8172, 1.8228],
    [1.6416, 1.7387, 1.7708, 1.7852, 1.7949, 1.804, 1.8114],
    [1.6436, 1.7343, 1.7603, 1.7767, 1.7885, 1.7973, 1.8059],
    [1.6468, 1.7304, 1.7591, 1.776, 1.7867, 1.7965, 1.8043],
  ],
  0.05: [
    [1.9565, 2.0503, 2.0784, 2.0961, 2.1079, 2.1161, 2.1258],
    [1.9551, 2.0426, 2.069, 2.081, 2.0963, 2.1028, 2.112],
    [1.9614, 2.0372, 2.0607, 2.0757, 2.0819, 2.0906, 2.0955],
    [1.9615, 2.0323, 2.0553, 2.064, 2.0726, 2.0811, 2.0915],
    [1.9582, 2.0258, 2.0491, 2.0632, 2.0762, 2.0851, 2.0898],
  ],
  0.04: [
    [2.0559, 2.1348, 2.1654, 2.1851, 2.1949, 2.2074, 2.213],
    [2.0579, 2.1316, 2.1582, 2.1673, 2.176, 2.1862, 2.1969],
    [2.0538, 2.1212, 2.1449, 2.1574, 2.1685, 2.1739, 2.1829],
    [2.0556, 2.1182, 2.1385, 2.1487, 2.1609, 2.1699, 2.1789],
    [2.0553, 2.1146, 2.1373, 2.1532, 2.1631, 2.1707, 2.1757],
  ],
  0.01: [
    [2.583, 2.6254, 2.6421, 2.6664, 2.6712, 2.6768, 2.6879],
    [2.5828, 2.6195, 2.6427, 2.6562, 2.6668, 2.6762, 2.6831],
    [2.5765, 2.6101, 2.6376, 2.649, 2.6512, 2.6636, 2.6658],
    [2.5788, 2.6053, 2.631, 2.6413, 2.6477, 2.6517, 2.6662],
    [2.5723, 2.6159, 2.6298, 2.6431, 2.656, 2.6634, 2.6668],
  ],
}

/** The most sessions for which the rule was worked out; with more, the constants of so many stand in. */
export const mostLookedAt = 8

/**
 * The two-sided p that a comparison must reach to be shown after `done` of at most `most` sessions, when one looks
 * after each from the second on, so that the total error over all looks stays at `total`: 2(1 − Φ(C·√(most/done))), strict early (after
 * O'Brien & Fleming 1979; from memory). More than six levels use the constants of six, which is on the safe side. Fewer
 * than two sessions, or none left to look early at, keep the total itself; sessions beyond the most keep the last look's.
 *
 * @example lookLevel(0.05, { levels: 2, most: 2, done: 2 }) // 0.050 (one look has no price)
 */
export function lookLevel(
  total: TotalError,
  { levels, most, done }: { levels: number; most: number; done: number },
): number {
  if (most <= 2 || done < 2) return total
  const row = constants[total][Math.min(6, Math.max(2, levels)) - 2] as readonly number[]
  const c = row[Math.min(mostLookedAt, most) - 2] as number
  return 2 * normalTails(c * Math.sqrt(most / Math.min(done, most))).upper
}
