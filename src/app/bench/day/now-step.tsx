import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { LineMark } from '@/app/bench/line-mark.tsx'
import { pieceName } from '@/app/bench/line-name.ts'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { Timer } from '@/app/kit/time/timer.tsx'
import { useTicking } from '@/app/kit/time/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import type { Session } from '@/core/session/session-record.ts'
import { runSeconds, type StepRun } from '@/core/session/step-runs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { stepText } from '@/core/wording/bench/event-text.ts'
import { endsByText } from '@/core/wording/plan/ends-by-text.ts'
import { workText } from '@/core/wording/weighing/work-text.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'

import { listText } from '@/core/wording/words/list-text.ts'
import { unitLetter } from '@/core/wording/words/unit-name.ts'
import { clockOf, runOf } from './next-on-line.ts'
import { StepPresses } from './step-presses.tsx'

interface NowStepProps {
  item: AgendaItem
  runs: readonly StepRun[]
  /** What follows on the same dough or piece: one press ends this step and begins that one. */
  next: StepRun | null
}

/** The one thing to do now: whose dough, which step, the clock to it, and one big button. */
export function NowStep({ item, runs, next }: NowStepProps) {
  const { plan, session } = useBench()
  const run = runOf(runs, item)
  const clockAt = run ? clockOf(run) : null
  const { now: clock } = useServices()
  const degrees = useTemperatureText()
  const name = stepText(plan, item.step.id, item.repeat)
  const ending = item.do === 'end'
  const byClock = item.step.endsBy.by === 'clock'
  const seconds = runSeconds(item.step)
  const stepKey = `${item.unit.id}/${item.step.id}/${item.repeat}`
  return (
    <section className={styles.now} aria-label="Now">
      {item.units.length > 1 ? (
        <b className={styles.allDoughs}>All doughs: {lettersOf(session, item)}</b>
      ) : (
        <LineMark unit={item.unit} size="large" />
      )}
      {item.unit.kind === 'piece' ? (
        <p className={styles.then}>{pieceText(session, plan, item.unit.id)}</p>
      ) : null}
      <h2 key={stepKey} className={styles.nowTitle} {...landing}>
        {name}
      </h2>
      {ending && clockAt ? (
        <Timer
          label={`${name}, ${item.letter}`}
          startedAt={clockAt.startedAt}
          clock={clock}
          size="bench"
          {...(byClock && clockAt.goalSeconds > 0 ? { goalSeconds: clockAt.goalSeconds } : {})}
        />
      ) : (
        <p className={styles.due}>
          <Due item={item} />
        </p>
      )}
      {ending && !byClock ? (
        <p className={styles.mark}>
          <b>{endsByText(item.step, degrees)}</b>{' '}
          {seconds > 0 ? `Expected after about ${durationText(seconds)}.` : ''}
        </p>
      ) : null}
      <p className={styles.then}>{workText(item.step)}</p>
      <StepPresses key={`${stepKey}/${item.do}`} item={item} runs={runs} run={run} next={next} />
    </section>
  )
}

const lettersOf = (session: Session, { units }: AgendaItem) =>
  listText(units.map((unit) => unitLetter(session, unit).letter))

/** Of a piece its flight and place, never its code: whoever bakes and tastes must not see one beside a letter. */
function pieceText(session: Session, plan: Plan, pieceId: string): string {
  return pieceName(session, plan, pieceId).which
}

/** When the step is due, said by the clock: of the whole step only this follows it. */
function Due({ item }: { item: AgendaItem }) {
  const now = useTicking(useServices().now)
  return dueText(item, now, useBench().session.zone)
}

function dueText(item: AgendaItem, now: number, zone: string): string {
  if (item.dueAt === null) return 'when you are ready'
  const seconds = Math.round((item.dueAt - now) / 1000)
  if (seconds > 30) return `in ${durationText(seconds)}, at ${dayTime(item.dueAt, now, zone)}`
  if (seconds >= -30) return 'now'
  return `was due at ${dayTime(item.dueAt, now, zone)}, ${durationText(-seconds)} ago`
}
