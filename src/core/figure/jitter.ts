const goldenShare = (Math.sqrt(5) - 1) / 2

/**
 * A sideways shift between -1 and 1 for the row at `index`, so that equal scores do not hide one another: the
 * golden-ratio sequence, which spreads any number of rows evenly and is the same on every screen and in every print.
 */
export function jitter(index: number): number {
  const part = ((index + 1) * goldenShare) % 1
  return part * 2 - 1
}
