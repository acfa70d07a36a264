import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { useShownOfClock } from '@/app/kit/time/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import { floorNow, ripenessQueue } from '@/core/fairness/at-oven/ripeness-queue.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import type { StepRun } from '@/core/session/step-runs.ts'
import { floorText, ripenessText } from '@/core/wording/bench/at-oven-text.ts'

interface EqualAtOvenProps {
  /** What stands in front to be launched. */
  front: AgendaItem
  items: readonly AgendaItem[]
  runs: readonly StepRun[]
  onGo: (item: AgendaItem) => void
}

/** Before a launch: what waits riper than the next, with the press that lets it go first, and a floor that is not as hot as before. */
export function EqualAtOven({ front, items, runs, onGo }: EqualAtOvenProps) {
  const { session, plan, events } = useBench()
  const { now } = useServices()
  const degrees = useTemperatureText()
  // How ripe what waits is moves by minutes.
  useShownOfClock(now, (at) => Math.floor(at / 60_000))
  const queue = ripenessQueue({ session, plan, runs, events, items, now: now() })
  const riper = queue?.riper?.item
  const said = riper?.unit.id === front.unit.id ? null : ripenessText(queue, front)
  const floor = floorNow(events)
  return (
    <>
      {floor ? <p className={styles.then}>{floorText(floor, degrees)}</p> : null}
      {said ? <p className={styles.then}>{said.sentence}</p> : null}
      {said?.press && riper ? (
        <Button size="bench" means={`riper/${riper.unit.id}`} onPress={() => onGo(riper)}>
          {said.press}
        </Button>
      ) : null}
    </>
  )
}
