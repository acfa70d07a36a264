import { useMemo } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import look from '@/app/bench/day/now.module.css'
import { Button } from '@/app/kit/press/button.tsx'
import { useShownOfClock } from '@/app/kit/time/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import type { AnewAsked } from '@/app/worker/clock-worker.ts'
import { answerOf, useAnswer } from '@/app/worker/use-answer.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { departedInSession } from '@/core/whole-trial/departed-in-session.ts'
import { dayAnewText } from '@/core/wording/bench/day-anew-text.ts'

/**
 * What is late, what that does to the day, and whether to go on or let the others wait: made anew off the screen at every entry
 * and every minute while something is late. Nothing while the day goes as planned.
 */
export function MadeAnew({ items }: { items: readonly AgendaItem[] }) {
  const { whole, plan, session, events, log } = useBench()
  const { now: clock } = useServices()
  const departed = departedInSession(whole, session).some(({ what }) => what === 'wait')
  const lateAt = useShownOfClock(clock, (now) => {
    const isLate = items.some(({ latestAt }) => latestAt !== null && now > latestAt)
    return isLate || departed ? Math.floor(now / 60_000) : null
  })
  const question = useMemo(
    (): AnewAsked | null =>
      lateAt === null ? null : { plan, session, events, now: Math.max(clock(), lateAt * 60_000) },
    [plan, session, events, lateAt, clock],
  )
  const answer = answerOf(
    useAnswer('clock', question, (service, asked: AnewAsked) => service.anew(asked)),
  )
  if (question === null || !answer?.anew || answer.of !== events.length) return null
  const said = dayAnewText(answer.anew, session, plan, question.now)
  if (!said) return null
  const { press = [] } = answer.anew.wait ?? {}
  return (
    <section className={look.anew} aria-label="The day made anew">
      <p className={styles.then}>{said.sentence}</p>
      {said.wait ? (
        <>
          <Button
            size="bench"
            means={`others wait/${JSON.stringify(press)}`}
            onPress={() => log(...press)}
          >
            {said.wait.press}
          </Button>
          <p className={styles.quiet}>{said.wait.after}</p>
        </>
      ) : null}
    </section>
  )
}
