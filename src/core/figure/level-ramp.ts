import {
  formatHex,
  useMode as knowMode,
  modeLrgb,
  modeOklab,
  modeOklch,
  modeRgb,
  type Oklch,
} from 'culori/fn'

// Only the colour spaces between OKLCH and the screen: the whole library would not fit the first load.
for (const mode of [modeLrgb, modeOklab, modeOklch, modeRgb]) knowMode(mode)

export type Appearance = 'light' | 'dark'

/** How a level is painted. */
export interface LevelPaint {
  fill: string
  /** For a choice: the hatch that tells options apart without colour; null on the ramp. */
  pattern: LevelPattern | null
}

const levelPatterns = [
  'diagonal',
  'dots',
  'upright',
  'back-diagonal',
  'grid',
  'rings',
  'across',
  'plain',
] as const
export type LevelPattern = (typeof levelPatterns)[number]

/** What the options of a choice are hatched on, as the page's paper. */
const papers: Record<Appearance, string> = {
  light: formatHex(oklch(0.985, 0.003, 100)),
  dark: formatHex(oklch(0.2, 0.006, 75)),
}

type Stop = readonly [lightness: number, chroma: number, hue: number]

const stops: Record<Appearance, readonly Stop[]> = {
  light: [
    [0.85, 0.115, 88],
    [0.7, 0.105, 120],
    [0.585, 0.095, 178],
    [0.45, 0.095, 240],
    [0.32, 0.14, 280],
  ],
  dark: [
    [0.955, 0.081, 99],
    [0.806, 0.124, 128],
    [0.695, 0.094, 182],
    [0.591, 0.084, 246],
    [0.508, 0.151, 278],
  ],
}

const mixed = new Map<string, LevelPaint>()

/**
 * The paint of the level at `index` of `count`, counted in rising order, dry to wet: pale wheat to deep ink blue,
 * interpolated in OKLCH between five stops. Colours are sRGB hex; nothing is written on them, and every patch has an
 * outline of ink. Up to five levels differ by colour for every eye; from six on colour only helps and the value says it.
 * Each place on the ramp is mixed once: a key at a level asks for every one of them again.
 */
export function rampPaint(index: number, count: number, appearance: Appearance): LevelPaint {
  const share = count < 2 ? 0.5 : index / (count - 1)
  const place = `${appearance} ${share}`
  const known = mixed.get(place)
  if (known) return known
  const fresh = { fill: formatHex(between(stops[appearance], share)), pattern: null }
  mixed.set(place, fresh)
  return fresh
}

/** The paint of an option of a choice: paper, told apart by its hatch in ink (eight, then again). */
export function choicePaint(index: number, appearance: Appearance): LevelPaint {
  const pattern = levelPatterns[index % levelPatterns.length] ?? 'plain'
  return { fill: papers[appearance], pattern }
}

function between(ramp: readonly Stop[], share: number): Oklch {
  const place = Math.min(Math.max(share, 0), 1) * (ramp.length - 1)
  const lower = ramp[Math.min(Math.floor(place), ramp.length - 2)]
  const upper = ramp[Math.min(Math.floor(place), ramp.length - 2) + 1]
  if (!lower || !upper) throw new Error('a ramp has at least two stops')
  const part = place - Math.min(Math.floor(place), ramp.length - 2)
  const mix = (a: number, b: number) => a + (b - a) * part
  return oklch(mix(lower[0], upper[0]), mix(lower[1], upper[1]), mix(lower[2], upper[2]))
}

function oklch(l: number, c: number, h: number): Oklch {
  return { mode: 'oklch', l, c, h }
}
