import type { ReactNode } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { LineMark } from '@/app/bench/line-mark.tsx'
import { whichBefore } from '@/app/bench/line-name.ts'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useShownOfClock } from '@/app/kit/time/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { stepText } from '@/core/wording/bench/event-text.ts'
import { lateText } from '@/core/wording/bench/late-text.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import { soonestFirst } from './soonest-first.ts'

interface ComingUpProps {
  items: readonly AgendaItem[]
  onPick: (item: AgendaItem) => void
}

/**
 * What every other line is doing or waiting for, soonest first by the day as it was made anew last; a press brings it to the
 * front.
 */
export function ComingUp({ items, onPick }: ComingUpProps) {
  const { plan, session, goesAt } = useBench()
  if (items.length === 0) return null
  return (
    <Section title="Coming up">
      <ol className={styles.lines}>
        {soonestFirst(items, goesAt).map(({ item, at }) => (
          <li key={`${item.unit.id}/${item.step.id}/${item.repeat}/${item.do}`}>
            <button type="button" className={styles.line} onClick={() => onPick(item)}>
              <span>
                <DueTime at={at} />
              </span>
              <span className={styles.lineMark}>
                <LineMark unit={item.unit} size="small" />
              </span>
              <WithLateness item={item} at={at}>
                {whichBefore(session, plan, item.unit)}
                {item.do === 'end' ? 'End of ' : ''}
                {stepText(plan, item.step.id, item.repeat)}
              </WithLateness>
            </button>
          </li>
        ))}
      </ol>
    </Section>
  )
}

/** When it is due, with its day where that is not today: over midnight another. */
function DueTime({ at }: { at: number | null }) {
  const { session } = useBench()
  return useShownOfClock(useServices().now, (now) =>
    at === null ? null : dayTime(at, now, session.zone),
  )
}

interface WithLatenessProps {
  item: AgendaItem
  at: number | null
  children: ReactNode
}

/** What is to be done, and whether it is late or will be by then; of the whole list only this follows the clock. */
function WithLateness({ item, at, children }: WithLatenessProps) {
  const late = useShownOfClock(useServices().now, (now) => lateText(item, at, now))
  return (
    <span className={late === '' ? '' : styles.late}>
      {children}
      {boundUnits(late)}
    </span>
  )
}

/** The way back to letting the soonest line stand in front. */
export function FollowTheClock({ onPress }: { onPress: () => void }) {
  return (
    <Button kind="quiet" size="bench" onPress={onPress}>
      Follow the clock again
    </Button>
  )
}
