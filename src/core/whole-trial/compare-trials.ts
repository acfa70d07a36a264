import { saysSame } from '@/core/record/says-same.ts'
import type { WholeTrial } from './whole-trial.ts'

/** The parts of a trial that are records of their own, told apart by their ids. */
export const recordParts = ['plans', 'sessions', 'events', 'ballots', 'photos'] as const
export type RecordPart = (typeof recordParts)[number]
export type PartCounts = Record<RecordPart, number>

/** How two copies of one trial stand to each other, told by their records and never by a clock. */
export interface TrialComparison {
  /** How many records only the other copy has, part by part. */
  onlyThere: PartCounts
  onlyHere: PartCounts
  /** Records of one id that say different things: they were changed on one side and cannot both be kept. */
  different: { part: RecordPart; id: string }[]
  /** Which copy holds all the other has and more; `both` when each has something the other lacks. */
  newer: 'there' | 'here' | 'both' | 'neither'
}

/** Compares a copy of a trial that comes from elsewhere (`there`) with the one that stands here. */
export function compareTrials(here: WholeTrial, there: WholeTrial): TrialComparison {
  const different: TrialComparison['different'] = []
  const counts = (from: WholeTrial, against: WholeTrial) => {
    const count = (part: RecordPart) => {
      const known = new Set(against[part].map(({ id }) => id))
      return from[part].filter(({ id }) => !known.has(id)).length
    }
    return {
      ...{ plans: count('plans'), sessions: count('sessions'), events: count('events') },
      ...{ ballots: count('ballots'), photos: count('photos') },
    }
  }
  for (const part of recordParts) {
    const held = new Map<string, unknown>(here[part].map((record) => [record.id, record]))
    for (const record of there[part])
      if (held.has(record.id) && !saysSame(held.get(record.id), record))
        different.push({ part, id: record.id })
  }
  const onlyThere = counts(there, here)
  const onlyHere = counts(here, there)
  const some = (parts: PartCounts) => recordParts.some((part) => parts[part] > 0)
  const newer = some(onlyThere)
    ? some(onlyHere)
      ? 'both'
      : 'there'
    : some(onlyHere)
      ? 'here'
      : 'neither'
  return { onlyThere, onlyHere, different, newer }
}
