import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import look from '@/app/bench/day/now.module.css'
import { LineMark } from '@/app/bench/line-mark.tsx'
import { lineText } from '@/app/bench/line-name.ts'
import { useOnePress } from '@/app/kit/press/use-one-press.ts'
import { useShownOfClock } from '@/app/kit/time/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { lateBy } from '@/core/session/late-by.ts'
import type { GoTo } from '@/core/session/press/go-to-press.ts'
import { stepText } from '@/core/wording/bench/event-text.ts'
import { latenessText } from '@/core/wording/bench/late-text.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'

interface GoThereProps {
  item: AgendaItem
  /** With it one press ends the work in front and begins there. */
  goTo?: GoTo
  onGo?: () => void
}

/** The dough that waits for the hands, under what is done now: a press goes there, and where the work here is done by it, says so. */
export function GoThere({ item, goTo, onGo }: GoThereProps) {
  const { plan, session, log } = useBench()
  const { busy, run } = useOnePress()
  const begins = goTo?.begins ?? item
  const letter = lineText(session, plan, item.unit)
  const name = stepText(plan, begins.step.id, begins.repeat)
  return (
    <button
      type="button"
      className={look.there}
      aria-busy={busy || undefined}
      data-means={`${goTo ? 'go on with' : 'to the front'} ${item.unit.id}/${begins.step.id}/${begins.repeat}`}
      onClick={() => (goTo ? run(() => log(...goTo.press)) : onGo?.())}
    >
      <LineMark unit={item.unit} size="small" />
      <span className={look.thereWords}>
        <span>{goTo ? `Done here. ${letter}: ${name} begins` : name}</span>
        <Lateness item={item} />
      </span>
      <svg aria-hidden="true" width="10" height="18" viewBox="0 0 10 18" fill="none">
        <path d="M1 1l8 8-8 8" stroke="currentColor" strokeWidth="2.4" />
      </svg>
    </button>
  )
}

function Lateness({ item }: { item: AgendaItem }) {
  const { session } = useBench()
  const { now: clock } = useServices()
  const isLate = useShownOfClock(clock, (now) => lateBy(item, now) !== null)
  const words = useShownOfClock(clock, (now) => {
    const { dueAt } = item
    if (dueAt === null) return 'when you are ready'
    const late = lateBy(item, now)
    if (late !== null) return `${latenessText(late)} late`
    return now >= dueAt - 30_000 ? 'now' : `at ${dayTime(dueAt, now, session.zone)}`
  })
  return isLate ? (
    <b className={styles.late}>{words}</b>
  ) : (
    <span className={styles.quiet}>{words}</span>
  )
}
