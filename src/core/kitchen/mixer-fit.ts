import type { Mixer } from './kitchen-record.ts'

/** Whether a mixer (or pair of hands) mixes so much dough well, by the least and most the baker has entered for it. */
export function mixerFit(mixer: Mixer, doughGrams: number): 'too-little' | 'fits' | 'too-much' {
  if (doughGrams < mixer.leastDoughGrams) return 'too-little'
  return doughGrams > mixer.mostDoughGrams ? 'too-much' : 'fits'
}
