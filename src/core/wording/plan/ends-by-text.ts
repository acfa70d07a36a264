import type { Step } from '@/core/trial/step.ts'
import { plainNumber } from '@/core/units/number-text.ts'

const readings = {
  dough: 'the dough',
  'oven-floor': 'the oven floor',
  core: 'the core',
} as const

const shortReadings = { dough: 'dough', 'oven-floor': 'oven floor', core: 'core' } as const

const marks = {
  rise: 'the rise',
  poke: 'the poke test',
  windowpane: 'a windowpane',
  'bake-loss': 'its bake loss',
  colour: 'its colour, against one piece or card kept beside it',
  own: 'its own mark',
} as const

const reached = {
  rise: 'It has risen: done',
  poke: 'It springs back slowly: done',
  windowpane: 'It makes a windowpane: done',
  'bake-loss': 'It has lost its weight: done',
  colour: 'It has the colour: done',
  own: 'The mark is reached: done',
} as const

type Ending = Pick<Step, 'endsBy'>
type Degrees = (celsius: number) => string

/** What ends the step that is running, in the words of the bench. */
export function endsByText({ endsBy }: Ending, degrees: Degrees): string {
  switch (endsBy.by) {
    case 'clock':
      return 'ends by the clock'
    case 'reading':
      return `Ends when ${readings[endsBy.of]} reads ${degrees(endsBy.celsius)}, not by the clock.`
    case 'mark':
      if (endsBy.mark === 'rise' && endsBy.risePercent !== undefined)
        return `Ends when it has risen by ${endsBy.risePercent} %, not by the clock.`
      if (endsBy.mark === 'bake-loss' && endsBy.lossPercent !== undefined)
        return `Ends when a piece has lost ${plainNumber(endsBy.lossPercent)} % of its weight at the oven, not by the clock. Weigh it on a board or rack: it is hot.`
      if (endsBy.mark === 'own' && endsBy.text)
        return `Ends by its mark, not by the clock: ${endsBy.text}`
      return `Ends by ${marks[endsBy.mark]}, not by the clock.`
  }
}

/** What ends a step, in a few words for a list; nothing for the clock, which is what a wait says already. */
export function endsWords({ endsBy }: Ending, degrees: Degrees): string {
  if (endsBy.by === 'clock') return ''
  if (endsBy.by === 'reading') return `until ${shortReadings[endsBy.of]} ${degrees(endsBy.celsius)}`
  if (endsBy.mark === 'rise')
    return endsBy.risePercent === undefined
      ? 'until risen'
      : `until risen by ${plainNumber(endsBy.risePercent)} %`
  if (endsBy.mark === 'bake-loss')
    return endsBy.lossPercent === undefined
      ? 'until its bake loss'
      : `until ${plainNumber(endsBy.lossPercent)} % lighter`
  if (endsBy.mark === 'colour') return 'until its colour'
  if (endsBy.mark === 'own') return endsBy.text ? `until ${endsBy.text}` : 'until a mark'
  return endsBy.mark === 'poke' ? 'until the poke test' : 'until the windowpane'
}

/** What the button that ends a step says: by a mark or a reading, the mark itself, so that nobody ends it by the clock. */
export function doneText({ endsBy }: Ending, degrees: Degrees): string {
  switch (endsBy.by) {
    case 'clock':
      return 'Done'
    case 'reading':
      return `It reads ${degrees(endsBy.celsius)}: done`
    case 'mark':
      return reached[endsBy.mark]
  }
}
