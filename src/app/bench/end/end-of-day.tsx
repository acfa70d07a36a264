import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import type { Entering } from '@/app/bench/day/log-presses.tsx'
import { isTyped } from '@/app/bench/entries/answers-entry.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { dayClosed, dayMissing, isNothingMissing } from '@/core/session/day-missing.ts'
import type { Response } from '@/core/trial/response.ts'
import { missingAnswerText, neverBakedText } from '@/core/wording/bench/day-missing-text.ts'

/** What the day still lacks, each a press to log it, and one that leaves it so; asked once. */
export function EndOfDay({ onEnter }: { onEnter: (entering: Entering) => void }) {
  const { session, plan, events, log } = useBench()
  const missing = dayMissing(session, plan, events)
  if (isNothingMissing(missing))
    return <p className={styles.then}>Nothing of the day is missing.</p>
  if (dayClosed(events))
    return <p className={styles.then}>What is missing of the day is left so.</p>
  return (
    <div className={styles.entry}>
      <p>
        <b>Still missing of this day</b>
      </p>
      {missing.neverBaked.length > 0 ? (
        <p className={styles.late}>{neverBakedText(missing.neverBaked, session)}</p>
      ) : null}
      {missing.answers.map(({ response, units: [unit, ...others] }) =>
        unit ? (
          <Button
            key={response.id}
            size="bench"
            onPress={() => onEnter({ ...entryOf(response), unit })}
          >
            {missingAnswerText(response, [unit, ...others], session)}
          </Button>
        ) : null,
      )}
      <Button
        size="bench"
        means="day-closed"
        onPress={() => log({ kind: 'day-closed', about: { kind: 'session', id: session.id } })}
      >
        Leave the rest as it is
      </Button>
    </div>
  )
}

/** Where a missing answer is logged: a score where scores are, a mass or size with the pieces, a temperature at the thermometer. */
function entryOf(response: Response): Omit<Entering, 'unit'> {
  if (isTyped(response) || response.scale.kind !== 'measured') return { kind: 'answers' }
  switch (response.scale.measure) {
    case 'core-temperature':
      return { kind: 'temperature', of: 'core' }
    case 'dough-temperature':
      return { kind: 'temperature', of: 'dough' }
    case 'rise':
      return { kind: 'rise' }
    default:
      return { kind: 'pieces' }
  }
}
