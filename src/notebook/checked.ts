import type * as z from 'zod/mini'
import { shapeTroubles } from '@/trial-file/shape-troubles.ts'
import { type FailureReason, NotebookFailure } from './notebook-failure.ts'

/** A record proved to fit its shape, its keys in the shape's order; throws a failure that names every trouble otherwise. */
export function checked<Shape extends z.ZodMiniType>(
  shape: Shape,
  record: unknown,
  reason: FailureReason = 'refused-record',
): z.output<Shape> {
  const result = shape.safeParse(record)
  if (result.success) return result.data
  const troubles = shapeTroubles(result.error.issues, record)
  throw new NotebookFailure(reason, JSON.stringify(troubles.slice(0, 3)), troubles)
}
