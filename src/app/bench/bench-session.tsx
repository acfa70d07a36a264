import { useEffect, useMemo, useState } from 'react'
import { ClockNote } from '@/app/bench/day/clock-note.tsx'
import { CoveredNote } from '@/app/bench/day/covered-note.tsx'
import { DayParts } from '@/app/bench/day/day-parts.tsx'
import { frontLine } from '@/app/bench/day/front-line.ts'
import type { Entering } from '@/app/bench/day/log-presses.tsx'
import { MadeAnew } from '@/app/bench/day/made-anew.tsx'
import { nextOnLine } from '@/app/bench/day/next-on-line.ts'
import { NowStep } from '@/app/bench/day/now-step.tsx'
import { useAgenda } from '@/app/bench/day/use-agenda.ts'
import { useDayAnew } from '@/app/bench/day/use-day-anew.ts'
import { EntryPanel } from '@/app/bench/entries/entry-panel.tsx'
import type { BenchUnit } from '@/app/bench/entries/entry-props.ts'
import { useBenchLog } from '@/app/bench/log/use-bench-log.ts'
import { MorePanel } from '@/app/bench/more/more-panel.tsx'
import { OvenView } from '@/app/bench/oven/oven-view.tsx'
import { BenchRail } from '@/app/bench/rail/bench-rail.tsx'
import { type LineNow, linesNow, nextToBegin } from '@/app/bench/rail/line-now.ts'
import { Missed } from '@/app/bench/ring/missed.tsx'
import { useRinging } from '@/app/bench/ring/use-ringing.ts'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { AfterFrame } from '@/app/kit/page/after-frame.tsx'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { useUncoveredTrial } from '@/app/kit/page/uncovered-trial.ts'
import { useCurrentLevel } from '@/app/kit/rail/current-level.ts'
import { draftsOf } from '@/app/services/drafts-of.ts'
import { useServices } from '@/app/services/services.ts'
import { type PlannedDay, plannedDay } from '@/core/clock-plan/planned-day.ts'
import { handsOfDay } from '@/core/clock-plan/whose-hands.ts'
import { levelAxis } from '@/core/figure/level-axis.ts'
import { levelsUnknown, sessionSealed } from '@/core/seal/sealed.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { dayAlarms } from '@/core/session/alarms/day-alarms.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { ovenCues } from '@/core/session/oven/oven-cues.ts'
import { ovenNow } from '@/core/session/oven/oven-now.ts'
import { goToPress } from '@/core/session/press/go-to-press.ts'
import type { Session } from '@/core/session/session-record.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { departedInSession } from '@/core/whole-trial/departed-in-session.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { AllDone } from './all-done.tsx'
import styles from './bench.module.css'
import { type Bench, BenchContext } from './bench-context.ts'
import { useKeepAwake } from './keep-awake.ts'
import { NotLogged } from './not-logged.tsx'

interface BenchSessionProps {
  whole: WholeTrial
  session: Session
  device: string
}

/** One session being worked: its day is planned in a frame of its own, then drawn. */
export function BenchSession(props: BenchSessionProps) {
  const { whole, session } = props
  const plan = planOfSession(whole, session)
  const day = useMemo(() => plannedDay(plan, session), [plan, session])
  return (
    <AfterFrame>
      <SessionAtWork {...props} plan={plan} day={day} />
    </AfterFrame>
  )
}

interface SessionAtWorkProps extends BenchSessionProps {
  plan: Plan
  day: PlannedDay
}

/** The doughs' clocks, the one thing to do now with its main press, and the day below. */
function SessionAtWork({ whole, session, device, plan, day }: SessionAtWorkProps) {
  const { notebook, now } = useServices()
  const awake = useKeepAwake()
  const { log, notLogged } = useBenchLog(whole, session)
  const drafts = useDraft(draftsOf(notebook, `bench/${session.id}`, 'What was typed at the bench'))
  const uncovered = useUncoveredTrial()
  const { levelId, pick } = useCurrentLevel()
  const [picked, setPicked] = useState<BenchUnit | null>(null)
  const [entering, setEntering] = useState<Entering | null>(null)

  const unknown = levelsUnknown(session, whole.events)
  const covered =
    unknown || (sessionSealed(whole, session.id) && uncovered.trialId !== whole.trial.id)
  const events = eventsOfSession(whole.events, session.id)
  const runs = useMemo(() => stepRuns(session, plan, events), [session, plan, events])
  const items = useAgenda(session, plan, events, day, now)
  const departed = departedInSession(whole, session).some(({ what }) => what === 'wait')
  const anew = useDayAnew({ plan, session, events, day, items, runs, departed })
  const { item, unit } = frontLine(session, items, levelId, picked)
  const oven = useMemo(() => ovenNow(session, plan, items, runs), [session, plan, items, runs])
  const { goesAt, beginsAt } = anew
  const handsOf = useMemo(() => handsOfDay(plan, session, day), [plan, session, day])
  const alarms = useMemo(() => dayAlarms(items, beginsAt), [items, beginsAt])
  const cues = useMemo(() => ovenCues(oven.inside), [oven])
  const bench: Bench = {
    ...{ whole, plan, session, device, covered, unknown, events, log, notLogged, drafts },
    ...{ goesAt, handsOf },
  }
  const ringing = useRinging({ alarms, cues, bench, awake })

  const bringToFront = (each: AgendaItem) => {
    pick(each.levelId)
    setPicked(each.unit)
    setEntering(null)
    toFront()
  }
  const bringLine = (line: LineNow) => {
    if (line.item) bringToFront(line.item)
    else {
      pick(line.levelId)
      setPicked(line.unit)
      setEntering(null)
      toFront()
    }
  }
  const followClock = () => {
    pick(null)
    setPicked(null)
  }
  const levelIds = levelAxis(plan.levels).positions.map((position) => position.levelId)
  useEffect(() => {
    toFront()
    if (!matchMedia(lying).matches) return undefined
    // Once more after the page has gone to its own top.
    const soon = requestAnimationFrame(toFront)
    return () => cancelAnimationFrame(soon)
  }, [])
  const lines = linesNow(session, levelIds, items, runs, goesAt)
  const frontKey = lines.find(
    (line) =>
      line.unit.id === unit?.id ||
      (line.levelId !== null && line.levelId === (item?.levelId ?? levelId)) ||
      lines.length === 1,
  )?.key
  const others = items.filter((each) => each !== item)
  const atOven = item !== null && item.step.kind === 'bake'
  const onEnter = (next: Entering) => {
    setEntering(next)
    toFront()
  }
  return (
    <BenchContext value={bench}>
      <div data-bench-rail="" />
      <ErrorBoundary what="the clocks of the doughs" of={items}>
        <BenchRail
          lines={lines}
          frontKey={frontKey ?? null}
          nextKey={nextToBegin(lines, items)}
          onPick={bringLine}
        />
      </ErrorBoundary>
      <div className={styles.columns}>
        <div className={styles.front}>
          <ClockNote device={device} />
          <NotLogged />
          {entering ? null : <Missed ringing={ringing} />}
          {entering && entering.kind !== 'more' ? (
            <ErrorBoundary what="this entry" of={entering}>
              <EntryPanel {...entering} kind={entering.kind} onClose={() => setEntering(null)} />
            </ErrorBoundary>
          ) : entering ? (
            <ErrorBoundary what="what can be logged" of={entering}>
              <MorePanel
                item={item}
                unit={entering.unit}
                runs={runs}
                onEnter={(kind) => onEnter({ kind, unit: entering.unit })}
                onClose={() => setEntering(null)}
              />
            </ErrorBoundary>
          ) : (
            <ErrorBoundary what="the step in front" of={items}>
              {item && unit ? (
                atOven ? (
                  <OvenView
                    {...{ oven, unit, runs, items }}
                    front={item}
                    onGo={bringToFront}
                    onEnter={onEnter}
                  />
                ) : (
                  <NowStep
                    item={item}
                    unit={unit}
                    runs={runs}
                    next={nextOnLine(runs, item)}
                    goTo={goToPress(session, item, others, runs, events)}
                    mayLaunch={oven.freePlaces > 0 && oven.next === null}
                    waiting={others[0] ?? null}
                    onGo={bringToFront}
                    onEnter={onEnter}
                  />
                )
              ) : (
                <AllDone
                  everything={items.length === 0}
                  unit={unit}
                  runs={runs}
                  onEnter={onEnter}
                />
              )}
            </ErrorBoundary>
          )}
          {entering ? null : (
            <>
              <ErrorBoundary what="the day made anew" of={events}>
                <MadeAnew day={anew} />
              </ErrorBoundary>
              <CoveredNote />
            </>
          )}
        </div>
        <DayParts
          items={others}
          runs={runs}
          ringing={ringing}
          followed={levelId === null && picked === null}
          onFollow={followClock}
          onPick={bringToFront}
        />
      </div>
    </BenchContext>
  )
}

/** Lying on the bench a phone has no room for the page's head: what is done now begins with the doughs' clocks. */
const lying = '(orientation: landscape) and (height < 30rem)'

/** Brings what is done now into view. */
export function toFront(): void {
  const rail = document.querySelector('[data-bench-rail]')
  if (rail && matchMedia(lying).matches)
    window.scrollTo(0, rail.getBoundingClientRect().top + window.scrollY)
  else window.scrollTo(0, 0)
}
