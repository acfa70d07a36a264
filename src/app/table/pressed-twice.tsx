import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { DoublePress } from '@/core/session/double-presses.ts'
import type { Event } from '@/core/session/event-record.ts'
import { lasts } from '@/core/session/lasting.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { eventText } from '@/core/wording/bench/event-text.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import styles from './table.module.css'

/** What two devices both pressed: one is kept by a press, the other taken back; the log shows both. */
export function PressedTwice({
  doubles,
  whole,
}: {
  doubles: readonly DoublePress[]
  whole: WholeTrial
}) {
  const { notebook, now } = useServices()
  const plan = planInForce(whole)
  const takeBack = ({ id, trialId, sessionId, about }: Event) =>
    notebook.log({ kind: 'void', trialId, sessionId, about, corrects: id })
  return (
    <Section title="Pressed on two devices">
      <ul className={styles.rows}>
        {doubles.map(({ first, second }) => {
          const [one, other] = [first, second].map(({ at, zone }) => dayTime(at, now(), zone))
          return (
            <li key={`${first.id} ${second.id}`} className={styles.row}>
              <span className={styles.said}>
                {eventText(first, plan)}: at {one} and at {other}. Keep one.
              </span>
              {lasts(first) || lasts(second) ? null : (
                <span className={styles.actions}>
                  <Button onPress={() => takeBack(second)}>Keep {one}</Button>
                  <Button onPress={() => takeBack(first)}>
                    {one === other ? 'Keep the other' : `Keep ${other}`}
                  </Button>
                </span>
              )}
            </li>
          )
        })}
      </ul>
    </Section>
  )
}
