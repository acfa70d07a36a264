import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { PadEntry } from '@/app/bench/pad/pad-entry.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { useServices } from '@/app/services/services.ts'
import { lastRise } from '@/core/session/readings/last-reading.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import { amountCheck } from './amount-checks.ts'
import { BackPress } from './back-press.tsx'
import type { EntryProps } from './entry-props.ts'
import { SeveralUnits, useSeveral } from './several-units.tsx'

/** How far the dough has risen in its marked tub, over its volume after mixing; of several doughs at once where they stand alike. */
export function RiseEntry({ unit, onKept }: EntryProps) {
  const { log, events, session } = useBench()
  const { now } = useServices()
  const several = useSeveral(unit)
  const last = lastRise(events, unit.id)
  const before = last ? ` Last ${last.value} % at ${dayTime(last.at, now(), session.zone)}.` : ''
  return (
    <PadEntry
      label="Risen by"
      unit="%"
      hint={`From the mark after mixing: 100 % is doubled.${before}`}
      check={amountCheck.rise}
      draftName={`rise/${unit.id}`}
      signed
      beside={<BackPress onPress={onKept} />}
      onKeep={async (percent) => {
        const kept = await log(
          ...several.units.map((about) => ({ kind: 'rise' as const, about, percent })),
        )
        if (kept) onKept()
        return kept
      }}
    >
      <h2 className={styles.unseen} {...landing}>
        Rise
      </h2>
      <SeveralUnits several={several} />
    </PadEntry>
  )
}
