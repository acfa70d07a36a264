import { useMemo } from 'react'
import { Fold } from '@/app/kit/page/fold.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { usePlanActions } from '@/app/plan/page/plan-page-context.ts'
import type { ClockAsked } from '@/app/worker/clock-worker.ts'
import { answerOf, useAnswer } from '@/app/worker/use-answer.ts'
import { planWithDay } from '@/core/clock-plan/other-days/day-way.ts'
import type { FoundWay } from '@/core/clock-plan/other-days/ways-of-day.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { dayWayText } from '@/core/wording/plan/day-way-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import styles from './other-days.module.css'

interface OtherDaysProps {
  plan: Plan
  session: Session
}

/** Two or three days that go and differ in kind, side by side, each with the press that takes it; nothing where no date is named. */
export function OtherDays({ plan, session }: OtherDaysProps) {
  const dated = plan.day?.fixed !== undefined
  const asked = useMemo(
    (): ClockAsked | null => (dated ? { plan, session } : null),
    [dated, plan, session],
  )
  const answer = useAnswer('clock', asked, (service, question: ClockAsked) =>
    service.ways(question),
  )
  const ways = answerOf(answer)
  const newer = answer.state === 'answered' && answer.newer
  if (asked === null || !ways || newer || ways.every(({ way }) => way.way === 'as-asked'))
    return null
  const fits = ways.some(({ way }) => way.way === 'as-asked')
  const result = fits
    ? `${countText(ways.length, 'day')} go`
    : `not as asked; ${countText(ways.length, 'other day')} ${ways.length === 1 ? 'goes' : 'go'}`
  return (
    <Fold name="Days that differ in kind" result={result} startsOpen>
      <ul className={styles.ways}>
        {ways.map((found) => (
          <OneWay key={JSON.stringify(found.way)} found={found} plan={plan} />
        ))}
      </ul>
    </Fold>
  )
}

function OneWay({ found, plan }: { found: FoundWay; plan: Plan }) {
  const { changeSaid } = usePlanActions()
  const { title, said, done } = dayWayText(found, plan)
  return (
    <li className={styles.way}>
      <h3 className={styles.title}>{title}</h3>
      {said.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {plan.day?.kept?.dayKey === found.toKeep.dayKey ? (
        <p className={styles.taken}>The day stands so.</p>
      ) : (
        <Button
          onPress={() => changeSaid(done, (now) => planWithDay(now, found.way, found.toKeep))}
        >
          Take this day
        </Button>
      )}
    </li>
  )
}
