import type { AskedReading } from '@/core/session/readings/asked-reading.ts'

const temperatures: Partial<Record<string, string>> = {
  dough: 'Dough temperature',
  'oven-floor': 'Floor temperature',
  core: 'Core temperature',
  serving: 'Serving temperature',
}

/** A reading that the moment asks for, as it is pressed; of a photo, what it is of. */
export function askedReadingText(reading: AskedReading): string {
  switch (reading.what) {
    case 'temperature':
      return temperatures[reading.of] ?? 'Temperature'
    case 'rise':
      return 'Rise in the tub'
    case 'folds':
      return 'Folds'
    case 'photo':
      return reading.of === 'tubs' ? 'Photo of all tubs, lids off' : 'Photo of the crumb'
  }
}
