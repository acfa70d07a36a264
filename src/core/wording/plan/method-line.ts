import type { Step } from '@/core/trial/step.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'

export interface MethodLineStep {
  id: string
  name: string
  /** How long after the first step begins, as hours and minutes, for one dough: "1:20". */
  begins: string
  handsSeconds: number
  waitSeconds: number
  times: string
}

/** The steps of the method one after another as one dough goes through them, repeats counted in. */
export function methodLine(steps: readonly Step[]): MethodLineStep[] {
  let seconds = 0
  return steps.map((step) => {
    const begins = clock(seconds)
    const handsSeconds = step.handsSeconds * step.repeats
    const waitSeconds = step.waitSeconds * step.repeats
    seconds += handsSeconds + waitSeconds
    const { id, name } = step
    return { id, name, begins, handsSeconds, waitSeconds, times: timesText(step) }
  })
}

/** The whole method of one dough in a few words: "7 steps, 5 h 4 min from mix to cut". */
export function methodSumText(steps: readonly Step[]): string {
  const seconds = steps.reduce(
    (sum, step) => sum + (step.handsSeconds + step.waitSeconds) * step.repeats,
    0,
  )
  const [first] = steps
  const last = steps.at(-1)
  if (!first || !last) return 'no step yet'
  const ends = steps.length === 1 ? '' : ` from ${lower(first.name)} to ${lower(last.name)}`
  return `${steps.length} ${steps.length === 1 ? 'step' : 'steps'}, ${durationText(seconds)}${ends}`
}

const lower = (name: string) => name.toLocaleLowerCase('en')

function clock(seconds: number): string {
  const minutes = Math.round(seconds / 60)
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`
}

function timesText({ handsSeconds, waitSeconds, repeats, per, once }: Step): string {
  const times = [
    handsSeconds > 0 ? `${durationText(handsSeconds)} by hand` : '',
    waitSeconds > 0 ? `wait ${durationText(waitSeconds)}` : '',
  ].filter(Boolean)
  const each = times.join(', ') || 'at once'
  const whose = per === 'piece' ? ', each piece' : once ? ', once for all doughs' : ''
  return `${repeats > 1 ? `${repeats} × ${each}` : each}${whose}`
}
