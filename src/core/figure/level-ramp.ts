import {
  formatHex,
  useMode as knowMode,
  modeLrgb,
  modeOklab,
  modeOklch,
  modeRgb,
  type Oklch,
  wcagContrast,
} from 'culori/fn'

// Only the colour spaces between OKLCH and the screen: the whole library would not fit the first load.
for (const mode of [modeLrgb, modeOklab, modeOklch, modeRgb]) knowMode(mode)

export type Appearance = 'light' | 'dark'

/** How a level is painted: fill, and ink or paper for the text on it, whichever contrasts more. */
export interface LevelPaint {
  fill: string
  text: string
  /** For a choice: the pattern that tells options apart without colour; null on the ramp. */
  pattern: LevelPattern | null
}

const levelPatterns = [
  'plain',
  'diagonal',
  'dots',
  'across',
  'grid',
  'back-diagonal',
  'rings',
  'upright',
] as const
export type LevelPattern = (typeof levelPatterns)[number]

type Stop = readonly [lightness: number, chroma: number, hue: number]

const stops: Record<Appearance, readonly Stop[]> = {
  light: [
    [0.83, 0.085, 88],
    [0.735, 0.075, 112],
    [0.635, 0.062, 165],
    [0.525, 0.075, 218],
    [0.405, 0.088, 246],
  ],
  dark: [
    [0.88, 0.085, 88],
    [0.81, 0.08, 112],
    [0.735, 0.07, 165],
    [0.66, 0.085, 218],
    [0.585, 0.105, 246],
  ],
}

const inks: Record<Appearance, { ink: Oklch; paper: Oklch; choice: Oklch }> = {
  light: {
    ink: oklch(0.25, 0.02, 60),
    paper: oklch(0.985, 0.008, 85),
    choice: oklch(0.8, 0.02, 80),
  },
  dark: {
    ink: oklch(0.215, 0.014, 60),
    paper: oklch(0.985, 0.008, 85),
    choice: oklch(0.74, 0.02, 80),
  },
}

/** Where neither ink nor paper reaches a contrast of 4.5 on a middle tone, one of these always does: √21 is 4.58. */
const black = oklch(0, 0, 0)
const white = oklch(1, 0, 0)

const mixed = new Map<string, LevelPaint>()

/**
 * The paint of the level at `index` of `count`, counted in rising order, dry to wet: pale wheat to deep water blue,
 * interpolated in OKLCH between five stops so that neighbours differ evenly in lightness. Colours are sRGB hex.
 * Each place on the ramp is mixed once: a key at a level asks for every one of them again.
 */
export function rampPaint(index: number, count: number, appearance: Appearance): LevelPaint {
  const share = count < 2 ? 0.5 : index / (count - 1)
  const place = `${appearance} ${share}`
  const known = mixed.get(place)
  if (known) return known
  const fresh = painted(between(stops[appearance], share), appearance, null)
  mixed.set(place, fresh)
  return fresh
}

/** The paint of an option of a choice: one neutral fill for all, told apart by pattern (eight, then again). */
export function choicePaint(index: number, appearance: Appearance): LevelPaint {
  const pattern = levelPatterns[index % levelPatterns.length] ?? 'plain'
  return painted(inks[appearance].choice, appearance, pattern)
}

function painted(fill: Oklch, appearance: Appearance, pattern: LevelPattern | null): LevelPaint {
  const { ink, paper } = inks[appearance]
  const text = clearest(fill, [ink, paper])
  const readable = wcagContrast(text, fill) >= 4.5 ? text : clearest(fill, [black, white])
  return { fill: formatHex(fill), text: formatHex(readable), pattern }
}

function clearest(fill: Oklch, choices: readonly [Oklch, Oklch]): Oklch {
  return wcagContrast(choices[0], fill) >= wcagContrast(choices[1], fill) ? choices[0] : choices[1]
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
