import { useBench } from '@/app/bench/bench-context.ts'
import { batchOf } from '@/core/session/line.ts'

/** Beside the weights of a dough whose level nobody knows: its cup goes in whole. */
export function CupToPour({ batchId }: { batchId: string }) {
  const { session, unknown } = useBench()
  if (!unknown) return null
  return (
    <p>
      <b>And cup {batchOf(session, batchId).letter}: all of it.</b> Do not weigh it, nor the dough.
    </p>
  )
}
