/** A range in percent of flour that a kind of dough usually keeps to. Hints: published ranges disagree, and none is a limit. */
export interface UsualRange {
  style: string
  of: 'hydration' | 'salt' | 'yeast' | 'oil' | 'malt'
  leastPercent: number
  mostPercent: number
  source: 'seen' | 'practice'
}

const hydration = (style: string, leastPercent: number, mostPercent: number): UsualRange => ({
  style,
  of: 'hydration',
  leastPercent,
  mostPercent,
  source: 'seen',
})

/** Hydration by style as seen in public charts without a source of their own; the rest is common practice. */
const usualRanges: readonly UsualRange[] = [
  hydration('bagel', 50, 60),
  hydration('pan bread', 58, 65),
  hydration('baguette', 65, 70),
  hydration('country loaf', 65, 75),
  hydration('focaccia', 75, 85),
  hydration('ciabatta', 80, 90),
  hydration('Neapolitan pizza', 55, 70),
  { style: 'bread', of: 'salt', leastPercent: 1.8, mostPercent: 2.2, source: 'practice' },
  { style: 'pan pizza', of: 'oil', leastPercent: 1, mostPercent: 5, source: 'practice' },
  { style: 'focaccia', of: 'oil', leastPercent: 1, mostPercent: 10, source: 'practice' },
  { style: 'bread', of: 'malt', leastPercent: 0.1, mostPercent: 1, source: 'practice' },
]

/** The usual ranges of one style, or of one quantity over all styles when no style is named. */
export function usualRangesOf(of: UsualRange['of'], style?: string): UsualRange[] {
  return usualRanges.filter((one) => one.of === of && (style === undefined || one.style === style))
}
