import type { LockedPart } from '@/core/seal/locked-change.ts'
import { lockedPartName } from '@/core/wording/plan/locked-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'

type Counts = Record<'plans' | 'sessions' | 'events' | 'ballots' | 'photos', number>

/** How a file's copy of a trial stands to the one in the notebook. */
export interface ComparisonToSay {
  onlyThere: Counts
  onlyHere: Counts
  different: readonly unknown[]
  newer: 'there' | 'here' | 'both' | 'neither'
}

/** What could not be taken in of a file's copy. */
export type ConflictToSay =
  | { reason: 'changed-record'; part: keyof Counts; id: string }
  | { reason: 'session-number'; number: number }
  | { reason: 'ballot-twice'; tasterId: string; sessionId: string }
  | { reason: 'plan-field'; field: string }
  | { reason: 'plan-locked'; part: LockedPart; as: 'here' | 'there' }
  | { reason: 'plan-stands'; as: 'here' | 'there' }

const names: Record<keyof Counts, [one: string, many: string]> = {
  plans: ['revision of the plan', 'revisions of the plan'],
  sessions: ['session', 'sessions'],
  events: ['log entry', 'log entries'],
  ballots: ['ballot', 'ballots'],
  photos: ['photo', 'photos'],
}

/** Records counted by their kinds: “3 log entries and 1 ballot”; empty when there are none. */
export function countsText(counts: Counts): string {
  const parts = Object.entries(names).flatMap(([part, [one, many]]) => {
    const count = counts[part as keyof Counts]
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`]
  })
  return listText(parts)
}

/** Which of two copies of a trial is newer, and by what: told by their records, not by a clock. */
export function comparisonText({ onlyThere, onlyHere, different, newer }: ComparisonToSay): string {
  const changed =
    different.length === 0
      ? ''
      : ` ${different.length} ${different.length === 1 ? 'record says' : 'records say'} something else in the file.`
  switch (newer) {
    case 'there':
      return `The file is newer: it has ${countsText(onlyThere)} that the notebook lacks.${changed}`
    case 'here':
      return `The notebook is newer: it has ${countsText(onlyHere)} that the file lacks.${changed}`
    case 'both':
      return `Each has something the other lacks: the file ${countsText(onlyThere)}, the notebook ${countsText(onlyHere)}.${changed}`
    case 'neither':
      return `Both have the same records.${changed || ' Only the note or where the trial lies differs.'}`
  }
}

/** One thing of a file that stayed out, and what stands instead. */
export function conflictText(conflict: ConflictToSay): string {
  switch (conflict.reason) {
    case 'changed-record':
      return `One ${names[conflict.part][0]} says something else in the file; it stays as it is here.`
    case 'session-number':
      return `Session ${conflict.number} was begun in both; the file’s stays out, with its log and its ballots.`
    case 'ballot-twice':
      return 'A taster has answered about the same sample in both; the ballot here stands.'
    case 'plan-field':
      return `Both changed this part of the plan, “${conflict.field}”; it stays as it is here.`
    case 'plan-locked':
      return `Locked since the first mix: ${lockedPartName(conflict.part)}; it stands as it was written ${written[conflict.as]}.`
    case 'plan-stands':
      return `What is locked has no place in the other copy’s plan; the plan in force is the one ${written[conflict.as]}, and the other is kept as a revision.`
  }
}

const written = { here: 'here', there: 'in the file' } as const
