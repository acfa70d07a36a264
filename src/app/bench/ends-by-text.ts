import type { Step } from '@/core/trial/step.ts'

const marks = {
  rise: 'the rise',
  poke: 'the poke test',
  windowpane: 'a windowpane',
  own: 'its mark',
} as const

const readings = {
  dough: 'dough',
  'oven-floor': 'oven floor',
  core: 'core',
} as const

/** What ends the step that is running, in the words of the bench. */
export function endsByText({ endsBy }: Pick<Step, 'endsBy'>): string {
  if (endsBy.by === 'clock') return 'ends by the clock'
  if (endsBy.by === 'reading') return `ends at ${readings[endsBy.of]} ${endsBy.celsius} °C`
  if (endsBy.mark === 'rise' && endsBy.risePercent !== undefined)
    return `ends when it has risen by ${endsBy.risePercent} %`
  if (endsBy.mark === 'own' && endsBy.text) return `ends by its mark: ${endsBy.text}`
  return `ends by ${marks[endsBy.mark]}, not by the clock`
}
