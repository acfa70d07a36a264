import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import foot from '@/app/bench/bench-foot.module.css'
import { BenchFoot } from '@/app/bench/bench-foot.tsx'
import { LogPresses, type LogPressesProps } from '@/app/bench/day/log-presses.tsx'
import look from '@/app/bench/day/now.module.css'
import { OvenCaution } from '@/app/bench/day/oven-caution.tsx'
import { LineMark } from '@/app/bench/line-mark.tsx'
import { unitName } from '@/app/bench/line-name.ts'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { Timer } from '@/app/kit/time/timer.tsx'
import { useServices } from '@/app/services/services.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import type { InOven, OvenNow } from '@/core/session/oven/oven-now.ts'
import { stepPress } from '@/core/session/press/step-press.ts'
import { runSeconds } from '@/core/session/step-runs.ts'
import { endsByText } from '@/core/wording/plan/ends-by-text.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import { EqualAtOven } from './equal-at-oven.tsx'
import ovenStyles from './oven-view.module.css'

interface OvenViewProps extends Omit<LogPressesProps, 'item'> {
  oven: OvenNow
  /** What stands in front: a bake to be launched or one to be pulled. */
  front: AgendaItem
  /** All that is next to do, and the press that brings one of it to the front. */
  items: readonly AgendaItem[]
  onGo: (item: AgendaItem) => void
}

/** At the oven: the seconds of what comes out next as large as they go, one press to pull it and one to launch the next. */
export function OvenView({ oven, front, items, onGo, ...presses }: OvenViewProps) {
  const { inside, next } = oven
  const pulled = inside.find(({ item }) => item === front) ?? inside[0]
  const launched = front.do === 'start' ? front : next
  const pullsFirst = front.do === 'end' || launched === null
  return (
    <>
      <section className={look.now} aria-label="Now">
        {pulled && pullsFirst ? <Inside of={pulled} /> : null}
        {launched && !pullsFirst ? <ToLaunch item={launched} free={oven.freePlaces} /> : null}
        <OvenCaution next />
        <LogPresses {...presses} item={front} />
        {launched && !pullsFirst ? (
          <EqualAtOven front={launched} items={items} runs={presses.runs} onGo={onGo} />
        ) : null}
      </section>
      <BenchFoot>
        {pulled && pullsFirst ? <Pull of={pulled} first /> : null}
        {launched ? <Launch item={launched} free={oven.freePlaces} first={!pullsFirst} /> : null}
        {pulled && !pullsFirst ? <Pull of={pulled} first={false} /> : null}
      </BenchFoot>
    </>
  )
}

function Inside({ of: { item, inAt, outAt, place } }: { of: InOven }) {
  const { session, plan } = useBench()
  const { now: clock } = useServices()
  const degrees = useTemperatureText()
  const byClock = item.step.endsBy.by === 'clock'
  const name = unitName(session, plan, item.unit)
  return (
    <>
      <div className={look.what}>
        <LineMark unit={item.unit} size="large" />
        <h2 className={look.nowTitle} {...landing}>
          In the oven
        </h2>
      </div>
      <p className={`${look.clock} ${ovenStyles.seconds}`}>
        <Timer
          label={`${item.step.name}, ${name.letter}`}
          startedAt={inAt}
          clock={clock}
          size="bench"
          {...(byClock ? { goalSeconds: (outAt - inAt) / 1000 } : {})}
        />
      </p>
      <p className={styles.then}>
        {plan.placesPerLoad > 1 ? `Place ${place}. ` : ''}
        {byClock ? (
          <>
            Pull at <b>{dayTime(outAt, clock(), session.zone)}</b>.
          </>
        ) : (
          endsByText(item.step, degrees)
        )}
      </p>
    </>
  )
}

function ToLaunch({ item, free }: { item: AgendaItem; free: number }) {
  const { plan, session } = useBench()
  const { now } = useServices()
  const due = item.dueAt === null ? '' : `, due at ${dayTime(item.dueAt, now(), session.zone)}`
  return (
    <>
      <div className={look.what}>
        <LineMark unit={item.unit} size="large" />
        <h2 className={look.nowTitle} {...landing}>
          Launch{due === '' ? '' : ' next'}
        </h2>
      </div>
      <p className={look.due}>
        {durationText(runSeconds(item.step))} in the oven{due}
      </p>
      <p className={styles.then}>
        {free > 0
          ? `${countText(free, 'place')} free.`
          : `No place is free: ${plan.placesPerLoad === 1 ? 'one goes' : `${plan.placesPerLoad} go`} in at once.`}
      </p>
    </>
  )
}

function Pull({ of: { item }, first }: { of: InOven; first: boolean }) {
  const { session, plan, events, log } = useBench()
  const words = named(item, session, plan)
  return (
    <Button
      kind={first ? 'primary' : 'plain'}
      size="bench"
      means={`end/${item.unit.id}/${item.step.id}/${item.repeat}`}
      onPress={() => log(...stepPress(session, item, events))}
    >
      <span className={first ? ovenStyles.main : foot.second}>Pull {words}</span>
    </Button>
  )
}

interface LaunchProps {
  item: AgendaItem
  free: number
  first: boolean
}

function Launch({ item, free, first }: LaunchProps) {
  const { session, plan, events, log } = useBench()
  const words = named(item, session, plan)
  return (
    <Button
      kind={first ? 'primary' : 'plain'}
      size="bench"
      means={`start/${item.unit.id}/${item.step.id}/${item.repeat}`}
      onPress={() => log(...stepPress(session, item, events))}
    >
      <span className={first ? ovenStyles.main : foot.second}>
        Launch {words}
        {first ? null : (
          <small> {free > 0 ? `${countText(free, 'place')} free` : 'no place free'}</small>
        )}
      </span>
    </Button>
  )
}

type Named = ReturnType<typeof useBench>

/** The letter, and which piece of its line: what is called out at the oven. */
function named({ unit }: AgendaItem, session: Named['session'], plan: Named['plan']): string {
  const { letter, which } = unitName(session, plan, unit)
  return which === '' ? letter : `${letter}, ${which}`
}
