import { useBench } from '@/app/bench/bench-context.ts'
import { amountCheck } from './amount-checks.ts'
import type { EntryProps } from './entry-props.ts'
import { NumberEntry } from './number-entry.tsx'

/** How far the dough has risen over its volume after mixing. */
export function RiseEntry({ unit, onKept }: EntryProps) {
  const { log } = useBench()
  return (
    <NumberEntry
      label="Risen by"
      unit="%"
      hint="Over the volume after mixing: 100 % is doubled."
      check={amountCheck.rise}
      draftName={`rise/${unit.id}`}
      onKeep={async (percent) => {
        const kept = await log({ kind: 'rise', about: unit, percent })
        if (kept) onKept()
        return kept
      }}
    />
  )
}
