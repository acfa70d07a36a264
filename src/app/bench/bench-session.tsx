import { useMemo, useState } from 'react'
import { ClockNote } from '@/app/bench/day/clock-note.tsx'
import { ComingUp, FollowTheClock } from '@/app/bench/day/coming-up.tsx'
import { frontLine } from '@/app/bench/day/front-line.ts'
import { nextOnLine } from '@/app/bench/day/next-on-line.ts'
import { NowStep } from '@/app/bench/day/now-step.tsx'
import { OffPlan } from '@/app/bench/day/off-plan.tsx'
import { OvenCaution } from '@/app/bench/day/oven-caution.tsx'
import { RunningClocks } from '@/app/bench/day/running-clocks.tsx'
import { ServingKey } from '@/app/bench/day/serving-key.tsx'
import { useAgenda } from '@/app/bench/day/use-agenda.ts'
import { EntryKeyBoard } from '@/app/bench/entries/entry-key-board.tsx'
import { EntryPanel } from '@/app/bench/entries/entry-panel.tsx'
import type { BenchUnit } from '@/app/bench/entries/entry-props.ts'
import { useEntryKeys } from '@/app/bench/entries/use-entry-keys.ts'
import { LogList } from '@/app/bench/log/log-list.tsx'
import { useBenchLog } from '@/app/bench/log/use-bench-log.ts'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useCurrentLevel } from '@/app/kit/rail/current-level.ts'
import { draftsOf } from '@/app/services/drafts-of.ts'
import { useServices } from '@/app/services/services.ts'
import { sessionUnsealed } from '@/core/seal/sealed.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import type { EntryKind } from '@/core/session/press/entry-kinds.ts'
import type { Session } from '@/core/session/session-record.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { nextSession } from '@/core/whole-trial/next-session.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import styles from './bench.module.css'
import { type Bench, BenchContext } from './bench-context.ts'
import { BenchFoot } from './bench-foot.tsx'
import { useKeepAwake } from './keep-awake.ts'
import { NotLogged } from './not-logged.tsx'

interface BenchSessionProps {
  whole: WholeTrial
  session: Session
  device: string
}

/** One session being worked: the step in front with its clock, the entries, what comes next, the log; clocks and undo at the foot. */
export function BenchSession({ whole, session, device }: BenchSessionProps) {
  const { notebook, now } = useServices()
  useKeepAwake()
  const { log, notLogged } = useBenchLog(whole, session)
  const key = `bench/${session.id}`
  const drafts = useDraft(draftsOf(notebook, key, 'What was typed at the bench'))
  const { levelId, pick } = useCurrentLevel()
  const [picked, setPicked] = useState<BenchUnit | null>(null)
  const [entering, setEntering] = useState<{ kind: EntryKind; unit: BenchUnit } | null>(null)

  const plan = planOfSession(whole, session)
  const events = eventsOfSession(whole.events, session.id)
  const runs = useMemo(() => stepRuns(session, plan, events), [session, plan, events])
  const items = useAgenda(session, plan, events, now)
  const { item, unit } = frontLine(session, items, levelId, picked)
  const bench: Bench = { whole, plan, session, events, log, notLogged, drafts }
  const bringToFront = (each: AgendaItem) => {
    pick(each.levelId)
    setPicked(each.unit)
    setEntering(null)
    window.scrollTo(0, 0)
  }
  const others = items.filter((each) => each !== item)
  const bakesNext = item?.step.kind === 'bake' || item?.step.kind === 'warm-up'
  return (
    <BenchContext value={bench}>
      <ClockNote device={device} />
      <NotLogged />
      {entering ? (
        <ErrorBoundary what="this entry" of={entering}>
          <EntryPanel kind={entering.kind} unit={entering.unit} onClose={() => setEntering(null)} />
        </ErrorBoundary>
      ) : (
        <div className={styles.columns}>
          <div className={styles.front}>
            {bakesNext ? <OvenCaution open /> : null}
            <ErrorBoundary what="the step in front" of={items}>
              {item ? (
                <NowStep item={item} runs={runs} next={nextOnLine(runs, item)} />
              ) : (
                <AllDone whole={whole} session={session} everything={items.length === 0} />
              )}
            </ErrorBoundary>
            <ErrorBoundary what="the entries" of={items}>
              {unit ? (
                <Keys item={item} unit={unit} onPick={(kind) => setEntering({ kind, unit })} />
              ) : null}
            </ErrorBoundary>
            {bakesNext ? null : <OvenCaution open={false} />}
            {levelId === null && picked === null ? null : (
              <FollowTheClock
                onPress={() => {
                  pick(null)
                  setPicked(null)
                }}
              />
            )}
          </div>
          <div>
            <ErrorBoundary what="what comes next" of={items}>
              <ComingUp items={others} onPick={bringToFront} />
            </ErrorBoundary>
            <ErrorBoundary what="what went otherwise than planned" of={whole}>
              <OffPlan />
            </ErrorBoundary>
            <ErrorBoundary what="the key of the codes" of={whole}>
              <ServingKey />
            </ErrorBoundary>
            <ErrorBoundary what="the log" of={whole}>
              <LogList />
            </ErrorBoundary>
          </div>
        </div>
      )}
      <BenchFoot device={device}>
        <ErrorBoundary what="the running clocks" of={items}>
          <RunningClocks items={entering ? items : others} runs={runs} onPick={bringToFront} />
        </ErrorBoundary>
      </BenchFoot>
    </BenchContext>
  )
}

interface KeysProps {
  item: AgendaItem | null
  unit: BenchUnit
  onPick: (kind: EntryKind) => void
}

function Keys({ item, unit, onPick }: KeysProps) {
  return <EntryKeyBoard key={unit.id} keys={useEntryKeys(item, unit)} onPick={onPick} />
}

interface AllDoneProps {
  whole: WholeTrial
  session: Session
  everything: boolean
}

/** Where to go when nothing is left to do: to the tasting, or, with that behind, to the next planned session or the findings. */
function AllDone({ whole, session, everything }: AllDoneProps) {
  const next = nextSession(whole)
  const tasted = sessionUnsealed(whole.events, session.id)
  const place = next !== null ? 'plan' : tasted ? 'findings' : 'tasting'
  return (
    <div className={styles.now}>
      <h2 className={styles.nowTitle} {...landing}>
        {everything ? 'All steps are done' : 'This dough is through'}
      </h2>
      {next === null ? null : (
        <p className={styles.then}>Session {next} begins on the Plan page.</p>
      )}
      <LinkButton href={`#/trial/${whole.trial.id}/${place}`} kind="primary" size="bench">
        To the {place}
      </LinkButton>
    </div>
  )
}
