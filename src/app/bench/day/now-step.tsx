import { useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import look from '@/app/bench/day/now.module.css'
import { LineMark } from '@/app/bench/line-mark.tsx'
import { pieceName } from '@/app/bench/line-name.ts'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { Timer } from '@/app/kit/time/timer.tsx'
import { useShownOfClock } from '@/app/kit/time/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import type { GoTo } from '@/core/session/press/go-to-press.ts'
import type { Session } from '@/core/session/session-record.ts'
import { runSeconds, type StepRun } from '@/core/session/step-runs.ts'
import { stepText } from '@/core/wording/bench/event-text.ts'
import { endsByText } from '@/core/wording/plan/ends-by-text.ts'
import { helperDoesText } from '@/core/wording/plan/run-sheet-text.ts'
import { workText } from '@/core/wording/weighing/work-text.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { unitLetter } from '@/core/wording/words/unit-name.ts'
import { GoThere } from './go-there.tsx'
import { LogPresses, type LogPressesProps } from './log-presses.tsx'
import { clockOf, runOf } from './next-on-line.ts'
import { OvenCaution } from './oven-caution.tsx'
import { type Asked, AskedEnd, StepPresses } from './step-presses.tsx'

interface NowStepProps extends Omit<LogPressesProps, 'item'> {
  item: AgendaItem
  runs: readonly StepRun[]
  /** What follows on the same dough or piece: one press ends this step and begins that one. */
  next: StepRun | null
  /** The dough that waits for the hands, with the press that ends the work here and begins there. */
  goTo: GoTo | null
  /** The oven has a place and nothing waits for it. */
  mayLaunch: boolean
  /** What is due for other hands first, when nothing is to be done here. */
  waiting: AgendaItem | null
  onGo: (item: AgendaItem) => void
}

/** The one thing to do now: which dough, what, until when; the presses of its log; the main press at the foot. */
export function NowStep(props: NowStepProps) {
  const { item, runs, next, goTo, waiting, onGo } = props
  const { plan, session } = useBench()
  const [asked, setAsked] = useState<Asked | null>(null)
  const run = runOf(runs, item)
  const name = stepText(plan, item.step.id, item.repeat)
  const stepKey = `${item.unit.id}/${item.step.id}/${item.repeat}`
  const rests = item.do === 'end' && run !== undefined && run.handsOffAt !== null
  return (
    <>
      <section className={look.now} aria-label="Now">
        <div className={look.what}>
          {item.units.length > 1 ? (
            <b className={look.allDoughs}>All doughs: {lettersOf(session, item)}</b>
          ) : (
            <LineMark unit={item.unit} size="large" />
          )}
          <h2 key={`${stepKey}/${rests}`} className={look.nowTitle} {...landing}>
            {rests ? 'Hands off' : name}
          </h2>
        </div>
        <Hands item={item} name={name} rests={rests} />
        <ClockOfStep item={item} run={run} name={name} />
        {asked ? (
          <AskedEnd asked={asked} onAsked={setAsked} />
        ) : (
          <>
            <Ends item={item} rests={rests} />
            <ByHelper work={item.do === 'start' || item.handsOn ? item : next} />
            <LogPresses {...props} item={item} />
            {goTo ? (
              <GoThere item={goTo.item} goTo={goTo} />
            ) : (
              <OvenCaution next={item.step.kind === 'warm-up'}>
                {waiting ? <GoThere item={waiting} onGo={() => onGo(waiting)} /> : null}
              </OvenCaution>
            )}
          </>
        )}
      </section>
      <StepPresses
        key={`${stepKey}/${item.do}/${item.handsOn}`}
        item={item}
        runs={runs}
        run={run}
        next={next}
        mayLaunch={props.mayLaunch}
        asked={asked}
        onAsked={setAsked}
      />
    </>
  )
}

const lettersOf = (session: Session, { units }: AgendaItem) =>
  listText(units.map((unit) => unitLetter(session, unit).letter))

interface HandsProps {
  item: AgendaItem
  name: string
  rests: boolean
}

/** Whether hands are on it: a filled square, an open one; for a piece among others, which. */
function Hands({ item, name, rests }: HandsProps) {
  const { plan, session } = useBench()
  const which = item.unit.kind === 'piece' ? pieceName(session, plan, item.unit.id).which : ''
  const byHand = item.do === 'start' ? item.step.handsSeconds > 0 : isByHand(item)
  const words =
    item.do === 'start'
      ? 'To begin'
      : rests
        ? `Rest after ${name}`
        : byHand
          ? 'Hands on'
          : 'Hands off'
  return (
    <p className={look.hands}>
      <i className={byHand ? look.handsOn : look.handsOff} aria-hidden="true" />
      {which === '' ? words : `${words}, ${which}`}
    </p>
  )
}

/** Whether a running step is worked by hand now. */
const isByHand = ({ handsOn, step }: AgendaItem) =>
  handsOn || (step.kind !== 'bake' && step.handsSeconds > 0 && step.waitSeconds === 0)

interface ClockOfStepProps {
  item: AgendaItem
  run: StepRun | undefined
  name: string
}

/** The clock to the step's end, or when it is due. */
function ClockOfStep({ item, run, name }: ClockOfStepProps) {
  const { now: clock } = useServices()
  const clockAt = run && item.do === 'end' ? clockOf(run) : null
  if (!clockAt)
    return (
      <p className={look.due}>
        <Due item={item} />
      </p>
    )
  const counts = item.step.endsBy.by === 'clock' && !isByHand(item) && clockAt.goalSeconds > 0
  const goal = item.dueAt === null ? clockAt.goalSeconds : (item.dueAt - clockAt.startedAt) / 1000
  return (
    <p className={look.clock}>
      <Timer
        label={`${name}, ${item.letter}`}
        startedAt={clockAt.startedAt}
        clock={clock}
        size="bench"
        {...(counts ? { goalSeconds: goal } : {})}
      />
    </p>
  )
}

/** Whose hands the work is for that is done now or comes next, where it is a helper's. */
function ByHelper({ work }: { work: AgendaItem | StepRun | null }) {
  const { plan, handsOf } = useBench()
  const said = work ? helperDoesText(handsOf(work), stepText(plan, work.step.id, work.repeat)) : ''
  return said === '' ? null : <p className={styles.then}>{said}</p>
}

/** What ends it, and when. */
function Ends({ item, rests }: { item: AgendaItem; rests: boolean }) {
  const { session } = useBench()
  const degrees = useTemperatureText()
  const seconds = runSeconds(item.step)
  const dueTime = useShownOfClock(useServices().now, (now) =>
    item.dueAt === null ? null : dayTime(item.dueAt, now, session.zone),
  )
  if (item.do === 'end' && item.step.endsBy.by !== 'clock')
    return (
      <>
        <p className={look.mark}>
          <b>{endsByText(item.step, degrees)}</b>{' '}
          {seconds > 0 ? `Expected after about ${durationText(seconds)}.` : ''}
        </p>
        <p className={styles.then}>{workText(item.step)}</p>
      </>
    )
  const until =
    item.do === 'end' && dueTime !== null && (rests || !isByHand(item)) ? `until ${dueTime}` : ''
  return <p className={styles.then}>{until === '' ? workText(item.step) : until}</p>
}

/** When the step is due, said by the clock: of the whole step only this follows it. */
function Due({ item }: { item: AgendaItem }) {
  const { session, goesAt } = useBench()
  return useShownOfClock(useServices().now, (now) =>
    dueText(item.dueAt, goesAt(item), now, session.zone),
  )
}

/** In how long, by the day as it was made anew where that is still ahead; else by when it was due. */
function dueText(dueAt: number | null, goesAt: number | null, now: number, zone: string): string {
  if (dueAt === null) return 'when you are ready'
  const at = goesAt !== null && goesAt > now ? goesAt : dueAt
  const seconds = Math.round((at - now) / 1000)
  if (seconds > 30) return `in ${durationText(seconds)}, at ${dayTime(at, now, zone)}`
  if (seconds >= -30) return 'now'
  return `was due at ${dayTime(dueAt, now, zone)}, ${durationText(-seconds)} ago`
}
