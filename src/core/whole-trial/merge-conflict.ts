import type { LockedPart } from '@/core/seal/locked-change.ts'
import type { RecordPart } from './compare-trials.ts'

/** What could not be taken in, and stands as it stood here. */
export type MergeConflict =
  /** One id, two contents: the record here stays. */
  | { reason: 'changed-record'; part: RecordPart; id: string }
  /** Both began a session of this number: the other copy's session stays out with its log and ballots. */
  | { reason: 'session-number'; number: number }
  /** A taster answered about the same serving or set in both copies: the ballot here stands. */
  | { reason: 'ballot-twice'; tasterId: string; sessionId: string }
  /** Both changed this part of the plan differently: it stays as it is here. */
  | { reason: 'plan-field'; field: string }
  /** One copy changed what the other's lock fixes: it stands as that copy wrote it before its first mix. */
  | { reason: 'plan-locked'; part: LockedPart; as: Copy }
  /** What is locked cannot stand in the other copy's plan: the locked plan stays in force whole. */
  | { reason: 'plan-stands'; as: Copy }

/** Which of the two copies: the one that stands here, or the one that comes in. */
export type Copy = 'here' | 'there'
