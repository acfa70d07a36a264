import { useState } from 'react'
import { navigate } from 'wouter/use-hash-location'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useOpenTables } from '@/app/services/open-tables.ts'
import { useServices } from '@/app/services/services.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { dealSession } from '@/core/session/deal-session.ts'
import { sessionsDone } from '@/core/whole-trial/stage.ts'
import { dealRefusal, planNotKeptText } from '@/core/wording/plan/refusals.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import styles from './begin-session.module.css'
import type { PlanPartId } from './part-names.ts'
import { isUnkept } from './plan-page.ts'
import { usePlanPage, usePlanStore } from './plan-page-context.ts'
import { TroubleList } from './trouble-list.tsx'

/** Parts with a press of their own that keeps: while one is open, that press is the filled one. */
const valueParts: ReadonlySet<PlanPartId> = new Set([
  ...(['plan-factor', 'plan-levels', 'plan-main', 'plan-expectation', 'plan-hoped'] as const),
])

/** What is still to mend or to think about, and, where it does not stand at the foot of the window, the press that begins. */
export function BeginSession({ press }: { press: boolean }) {
  return (
    <div id="plan-ready" className={styles.ready}>
      <TroubleList />
      {press ? <BeginPress /> : null}
    </div>
  )
}

/** The press that deals the next session, or what is to mend before it can. */
export function BeginPress() {
  const whole = useWholeTrial()
  const store = usePlanStore()
  const { notebook, now, zone, newId } = useServices()
  const stops = usePlanPage(
    (page) => page.troubles.filter((each) => each.severity === 'stop').length,
  )
  const unfinished = usePlanPage((page) => Object.keys(page.unfinished).length)
  const planned = usePlanPage((page) => page.plan.plannedSessions)
  const helps = useOpenTables()?.helps.has(whole.trial.id) ?? false
  const [asking, setAsking] = useState(false)
  const [refused, setRefused] = useState<string>()
  const number = whole.sessions.length + 1
  const fixed = whole.sessions.find((session) => session.number === 1)?.plannedSessions ?? planned
  const running = sessionsDone(whole) < whole.sessions.length
  const added = number > fixed
  const toMend = stops + unfinished
  const valueOpen = usePlanPage(({ opened }) => opened.some((part) => valueParts.has(part)))
  const begin = async () => {
    setAsking(false)
    await store.getState().flush()
    const { plan, notKept, troubles } = store.getState()
    if (isUnkept(notKept)) return setRefused(planNotKeptText)
    if (troubles.some(({ severity }) => severity === 'stop')) return
    const dealt = dealSession({
      plan,
      trialSeed: whole.trial.seed,
      number,
      earlier: whole.sessions,
      at: now(),
      zone,
      newId,
    })
    if (!dealt.ok) return setRefused(dealRefusal(dealt))
    await notebook.beginSession(dealt.session).catch(async (cause: unknown) => {
      // Begun in another window at the same moment: it stands at the Bench, as this press asked.
      const stands = await notebook.wholeTrial(plan.trialId)
      if (!stands?.sessions.some((session) => session.number === number)) throw cause
    })
    navigate(`/trial/${plan.trialId}/bench`)
  }
  // Dealt here it would come to nobody: a helper's device has not even the seed of it.
  if (helps)
    return (
      <div className={styles.begin}>
        <p>Session {number} is begun on the baker’s device.</p>
      </div>
    )
  return (
    <div className={styles.begin}>
      {toMend > 0 ? (
        <p>
          {asSentenceStart(countText(toMend, 'thing'))} to mend before session {number} can begin.
        </p>
      ) : (
        <>
          <Button
            kind={running || valueOpen ? 'plain' : 'primary'}
            onPress={added || running ? () => setAsking(true) : begin}
          >
            Begin session {number}
          </Button>
          <p className={styles.soft}>
            Deals letters, order and codes. Expectation, margin and sessions lock at the first mix.
          </p>
        </>
      )}
      {refused ? <ErrorNote title="The session could not be dealt.">{refused}</ErrorNote> : null}
      <Dialog
        title={
          added
            ? `A session past the ${countText(fixed, 'planned one')}?`
            : `Session ${number - 1} is not done yet`
        }
        open={asking}
        onClose={() => setAsking(false)}
        actions={
          <>
            <Button onPress={() => setAsking(false)}>Not now</Button>
            <Button kind="primary" onPress={begin}>
              Begin session {number}
            </Button>
          </>
        }
      >
        {running ? (
          <p>
            Session {number - 1} is still at the bench or being tasted. Another can run beside it,
            with letters and codes of its own; once dealt it stays in the trial.
          </p>
        ) : null}
        {added ? (
          <p>
            {asSentenceStart(countText(fixed, 'session'))} {fixed === 1 ? 'was' : 'were'} planned
            before the first mix. One more can be made; the report will say that it was added, since
            a session added after a look at the answer can lead it.
          </p>
        ) : null}
      </Dialog>
    </div>
  )
}
