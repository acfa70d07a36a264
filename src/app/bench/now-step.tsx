import { Button } from '@/app/kit/button.tsx'
import { Timer } from '@/app/kit/timer.tsx'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { durationText } from '@/core/wording/duration-text.ts'
import { stepText } from '@/core/wording/event-text.ts'
import styles from './bench.module.css'
import { useBench } from './bench-context.ts'
import { clockTime } from './clock-time.ts'
import { endsByText } from './ends-by-text.ts'
import { LineMark } from './line-mark.tsx'
import { stepPress } from './step-press.ts'

/** The one thing to do now: whose dough, which step, the clock to it, and one big button. */
export function NowStep({
  item,
  now,
  startedAt,
}: {
  item: AgendaItem
  now: number
  startedAt: number | null
}) {
  const { log, plan, session } = useBench()
  const press = () => log(...stepPress(session, item))
  const ending = item.do === 'end'
  return (
    <div className={styles.now}>
      <LineMark unit={item.unit} size="large" />
      <h2 className={styles.nowTitle}>{stepText(plan, item.step.id, item.repeat)}</h2>
      {ending && startedAt !== null ? (
        <Timer
          label={`${stepText(plan, item.step.id, item.repeat)}, ${item.letter}`}
          startedAt={startedAt}
          now={now}
          size="bench"
          {...(item.step.waitSeconds + item.step.handsSeconds > 0
            ? { goalSeconds: item.step.waitSeconds + item.step.handsSeconds }
            : {})}
        />
      ) : (
        <p className={styles.due}>{dueText(item, now, session.zone)}</p>
      )}
      <p className={styles.then}>{ending ? endsByText(item.step) : workText(item)}</p>
      <Button kind="primary" size="bench" onPress={press}>
        {pressText(item)}
      </Button>
    </div>
  )
}

function pressText(item: AgendaItem): string {
  if (item.step.kind === 'bake') return item.do === 'start' ? 'Into the oven' : 'Out of the oven'
  return item.do === 'start' ? 'Begin' : 'Done'
}

function dueText(item: AgendaItem, now: number, zone: string): string {
  if (item.dueAt === null) return 'when you are ready'
  const seconds = Math.round((item.dueAt - now) / 1000)
  if (seconds > 30) return `in ${durationText(seconds)}, at ${clockTime(item.dueAt, zone)}`
  if (seconds >= -30) return 'now'
  return `${durationText(-seconds)} late, was due at ${clockTime(item.dueAt, zone)}`
}

function workText(item: AgendaItem): string {
  const { handsSeconds, waitSeconds } = item.step
  const parts = [
    handsSeconds > 0 ? `about ${durationText(handsSeconds)} of work` : '',
    waitSeconds > 0 ? `then ${durationText(waitSeconds)} of waiting` : '',
  ]
  return parts.filter(Boolean).join(', ')
}
