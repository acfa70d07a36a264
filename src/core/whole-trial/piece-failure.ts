import type { Standing } from '@/core/session/effective-events.ts'
import { type Failure, failuresOf } from '@/core/session/failures.ts'
import type { Session } from '@/core/session/session-record.ts'

/** The failure of each failed piece: the cause where one was logged, else that it was not served. */
export function failureOfPiece(
  session: Session,
  effective: readonly Standing[],
): Map<string, Failure> {
  const failed = new Map<string, Failure>()
  for (const failure of failuresOf(session, effective))
    for (const id of failure.pieceIds)
      if ((failed.get(id)?.what ?? 'not-served') === 'not-served') failed.set(id, failure)
  return failed
}
