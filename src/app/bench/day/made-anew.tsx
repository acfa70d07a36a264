import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import look from '@/app/bench/day/now.module.css'
import { Button } from '@/app/kit/press/button.tsx'
import { answerOf } from '@/app/worker/use-answer.ts'
import { dayAnewText } from '@/core/wording/bench/day-anew-text.ts'
import type { AnewDay } from './use-day-anew.ts'

/** What is late, what that does to the day, and whether to go on or let the others wait. Nothing while the day goes as planned. */
export function MadeAnew({ day: { question, answer } }: { day: AnewDay }) {
  const { plan, session, events, log } = useBench()
  const found = answerOf(answer)
  if (question === null || !found?.anew || found.of !== events.length) return null
  const said = dayAnewText(found.anew, session, plan, question.now)
  if (!said) return null
  const { press = [] } = found.anew.wait ?? {}
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
