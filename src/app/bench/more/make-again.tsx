import { useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import type { BenchUnit } from '@/app/bench/entries/entry-props.ts'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { useServices } from '@/app/services/services.ts'
import { wayToOvenSeconds } from '@/core/clock-plan/way-to-oven.ts'
import { failureReasonOf } from '@/core/record/failure-reason.ts'
import { sealOf } from '@/core/seal/sealed.ts'
import { notAgain } from '@/core/session/dough-again.ts'
import { batchOf } from '@/core/session/line.ts'
import { doughAgainText, notAgainText } from '@/core/wording/bench/dough-again-text.ts'
import { keepingFailureText } from '@/core/wording/files/keeping-failure-text.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'

interface MakeAgainProps {
  unit: BenchUnit
  onDone: () => void
  onLeave: () => void
}

/**
 * A dough that failed: said and counted, then made again where that is possible, with when it would be ready for the oven; or left
 * out, so that nobody is asked to taste it.
 */
export function MakeAgain({ unit, onDone, onLeave }: MakeAgainProps) {
  const { whole, session, plan, events, log, drafts } = useBench()
  const { notebook, now } = useServices()
  const [trouble, setTrouble] = useState<ReturnType<typeof keepingFailureText> | null>(null)
  const draftName = `failed/${unit.id}`
  const note = drafts.values[draftName] ?? ''
  const tasted = sealOf(whole, session.id) !== 'not-begun'
  const barred = notAgain(session, unit.id, events, tasted)
  const { letter, levelId } = batchOf(session, unit.id)
  const level = plan.levels.find(({ id }) => id === levelId) ?? null
  const readyAt = now() + wayToOvenSeconds(plan, level) * 1000
  const words = note.trim() === '' ? {} : { note: note.trim() }
  const makeIt = async () => {
    const ids = { trialId: whole.trial.id, sessionId: session.id, batchId: unit.id }
    try {
      await notebook.makeAgain({ ...ids, failed: words })
    } catch (cause) {
      setTrouble(keepingFailureText(failureReasonOf(cause)))
      return
    }
    drafts.clear(draftName)
    onDone()
  }
  const leaveOut = async () => {
    if (!(await log({ kind: 'failure', about: unit, what: 'not-served', ...words }))) return
    drafts.clear(draftName)
    onDone()
  }
  return (
    <div className={styles.entry}>
      <p {...landing}>
        {barred === null
          ? doughAgainText(letter, dayTime(readyAt, now(), session.zone))
          : notAgainText(barred)}
      </p>
      <TextField
        label="What happened (may stay empty)"
        value={note}
        onValue={(text) => drafts.set(draftName, text)}
        maxLength={500}
      />
      {trouble ? (
        <ErrorNote title={`It was not made again. ${trouble.title}`}>
          {trouble.kept} {trouble.mend}
        </ErrorNote>
      ) : null}
      {barred === null ? (
        <Button kind="primary" size="bench" means={`again/${unit.id}`} onPress={makeIt}>
          It failed: make it again
        </Button>
      ) : null}
      <Button size="bench" means={`left out/${unit.id}`} onPress={leaveOut}>
        It failed: leave it out
      </Button>
      <Button size="bench" kind="quiet" onPress={onLeave}>
        It did not fail
      </Button>
    </div>
  )
}
