import { useState } from 'react'
import { navigate } from 'wouter/use-hash-location'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { dealSession } from '@/core/session/deal-session.ts'
import { sessionsDone } from '@/core/whole-trial/stage.ts'
import { dealRefusal, planNotKeptText } from '@/core/wording/plan/deal-refusal.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { usePlanPage, usePlanStore } from './plan-page-context.ts'
import { TroubleList } from './trouble-list.tsx'

/** Whether the plan can be worked: what is still to mend, else the press that deals the next session. */
export function BeginSession() {
  const whole = useWholeTrial()
  const store = usePlanStore()
  const { notebook, now, zone, newId } = useServices()
  const stops = usePlanPage(
    (page) => page.troubles.filter((each) => each.severity === 'stop').length,
  )
  const unfinished = usePlanPage((page) => Object.keys(page.unfinished).length)
  const planned = usePlanPage((page) => page.plan.plannedSessions)
  const [asking, setAsking] = useState(false)
  const [refused, setRefused] = useState<string>()
  const number = whole.sessions.length + 1
  const fixed = whole.sessions.find((session) => session.number === 1)?.plannedSessions ?? planned
  const running = sessionsDone(whole) < whole.sessions.length
  const added = number > fixed
  const toMend = stops + unfinished
  const begin = async () => {
    setAsking(false)
    await store.getState().flush()
    const { plan, notKept, troubles } = store.getState()
    if (notKept !== null) return setRefused(planNotKeptText)
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
    await notebook.beginSession(dealt.session)
    navigate(`/trial/${plan.trialId}/bench`)
  }
  return (
    <Section title={toMend > 0 ? 'Still to mend' : 'Ready'} id="plan-ready">
      <TroubleList />
      {toMend > 0 ? (
        <p>
          {asSentenceStart(countText(toMend, 'thing'))} to mend before session {number} can begin.
        </p>
      ) : (
        <div>
          <Button
            kind={running ? 'plain' : 'primary'}
            onPress={added || running ? () => setAsking(true) : begin}
          >
            Begin session {number}
          </Button>
        </div>
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
    </Section>
  )
}
