import { useMemo, useState } from 'react'
import { Button } from '@/app/kit/button.tsx'
import { useCurrentLevel } from '@/app/kit/current-level.ts'
import { LinkButton } from '@/app/kit/link-button.tsx'
import { useDraft } from '@/app/kit/use-draft.ts'
import { useTicking } from '@/app/kit/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import { agenda } from '@/core/session/agenda.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import type { Session } from '@/core/session/session-record.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import styles from './bench.module.css'
import { type Bench, BenchContext } from './bench-context.ts'
import { ComingUp, FollowTheClock } from './coming-up.tsx'
import { type EntryKind, entryNames } from './entry-kinds.ts'
import { EntryPanel } from './entry-panel.tsx'
import { frontLine } from './front-line.ts'
import { useKeepAwake } from './keep-awake.ts'
import { LogList } from './log-list.tsx'
import { NowStep } from './now-step.tsx'
import { OvenCaution } from './oven-caution.tsx'
import { UndoFoot } from './undo-foot.tsx'
import { useBenchLog } from './use-bench-log.ts'

interface BenchSessionProps {
  whole: WholeTrial
  session: Session
  device: string
}

/** One session being worked: the step in front with its clock, the entries, what comes next, the log, and undo at the foot. */
export function BenchSession({ whole, session, device }: BenchSessionProps) {
  const { notebook, now: clock } = useServices()
  useKeepAwake()
  const now = useTicking(clock)
  const log = useBenchLog(whole, session)
  const key = `bench/${session.id}`
  const drafts = useDraft({
    load: () => notebook.draft(key),
    save: (values) => notebook.keepDraft(key, values),
    drop: () => notebook.dropDraft(key),
  })
  const { levelId, pick } = useCurrentLevel()
  const [entering, setEntering] = useState<EntryKind | null>(null)

  const plan = planOfSession(whole, session)
  const events = useMemo(() => eventsOfSession(whole.events, session.id), [whole, session])
  const runs = useMemo(() => stepRuns(session, plan, events), [session, plan, events])
  const items = agenda(session, plan, events, now)
  const { item, unit } = frontLine(session, items, levelId)
  const running = item
    ? runs.find(
        (run) =>
          run.unit.id === item.unit.id &&
          run.step.id === item.step.id &&
          run.repeat === item.repeat,
      )
    : undefined
  const bench: Bench = { whole, plan, session, events, log, drafts }
  return (
    <BenchContext value={bench}>
      <OvenCaution />
      {entering && unit ? (
        <EntryPanel kind={entering} unit={unit} onClose={() => setEntering(null)} />
      ) : (
        <div className={styles.columns}>
          <div className={styles.front}>
            {item ? (
              <NowStep item={item} now={now} startedAt={running?.startedAt ?? null} />
            ) : (
              <AllDone trialId={whole.trial.id} everything={items.length === 0} />
            )}
            {unit ? <EntryKeys onPick={setEntering} /> : null}
            {levelId === null ? null : <FollowTheClock onPress={() => pick(null)} />}
          </div>
          <div>
            <ComingUp
              items={items.filter((each) => each !== item)}
              now={now}
              onPick={(each) => pick(each.levelId)}
            />
            <LogList />
          </div>
        </div>
      )}
      <UndoFoot device={device} />
    </BenchContext>
  )
}

function EntryKeys({ onPick }: { onPick: (kind: EntryKind) => void }) {
  return (
    <div className={styles.pair}>
      {(Object.keys(entryNames) as EntryKind[]).map((kind) => (
        <Button key={kind} size="bench" onPress={() => onPick(kind)}>
          {entryNames[kind]}
        </Button>
      ))}
    </div>
  )
}

function AllDone({ trialId, everything }: { trialId: string; everything: boolean }) {
  return (
    <div className={styles.now}>
      <h2 className={styles.nowTitle}>
        {everything ? 'All steps are done' : 'This dough is through'}
      </h2>
      <LinkButton href={`#/trial/${trialId}/tasting`} kind="primary" size="bench">
        To the tasting
      </LinkButton>
    </div>
  )
}
