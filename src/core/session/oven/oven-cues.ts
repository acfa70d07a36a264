import type { InOven } from './oven-now.ts'

/** What a voice says of a bake, and when (UTC ms). */
export interface OvenCue {
  key: string
  at: number
  say: 'turn' | 'soon' | 'pull'
  of: InOven
}

/** So long before it is due out a bake is announced. Common practice: time to take up peel and gloves. */
const soonSeconds = 20

/** The cues of what is in the oven: turn at half its time, soon, pull; of a bake too short for all of them the last ones. */
export function ovenCues(inside: readonly InOven[]): OvenCue[] {
  return inside
    .flatMap((of): OvenCue[] => {
      const { item, inAt, outAt, halfAt } = of
      const soonAt = outAt - soonSeconds * 1000
      const cue = (say: OvenCue['say'], at: number): OvenCue => ({
        ...{ key: `${item.unit.id} ${item.step.id} ${item.repeat} ${say}`, at, say, of },
      })
      const long = halfAt < soonAt - soonSeconds * 1000
      return [
        ...(long ? [cue('turn', halfAt)] : []),
        ...(soonAt > inAt + soonSeconds * 1000 ? [cue('soon', soonAt)] : []),
        cue('pull', outAt),
      ]
    })
    .toSorted((one, other) => one.at - other.at)
}
