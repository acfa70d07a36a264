import type * as z from 'zod/mini'
import type { FailureReason } from '@/core/record/failure-reason.ts'
import { frozen } from '@/core/record/frozen.ts'
import { shapeTroubles } from '@/trial-file/shape-troubles.ts'
import { NotebookFailure } from './notebook-failure.ts'

/** The same records, closed against change in development and tests; left as they are in the built app, where it costs. */
export const closed = <Records>(records: Records): Records =>
  import.meta.env.DEV ? frozen(records) : records

/**
 * A record proved to fit its shape, its keys in the shape's order, and closed against change; throws a failure that names
 * every trouble otherwise.
 */
export function checked<Shape extends z.ZodMiniType>(
  shape: Shape,
  record: unknown,
  reason: FailureReason = 'refused-record',
): z.output<Shape> {
  const result = shape.safeParse(record)
  if (result.success) return closed(result.data)
  const troubles = shapeTroubles(result.error.issues, record)
  throw new NotebookFailure(reason, JSON.stringify(troubles.slice(0, 3)), troubles)
}
