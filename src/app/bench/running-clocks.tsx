import { Timer } from '@/app/kit/timer.tsx'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { runSeconds, type StepRun } from '@/core/session/step-runs.ts'
import { stepText } from '@/core/wording/event-text.ts'
import { useBench } from './bench-context.ts'
import styles from './bench-foot.module.css'
import { LineMark } from './line-mark.tsx'
import { runOf } from './next-on-line.ts'

interface RunningClocksProps {
  items: readonly AgendaItem[]
  runs: readonly StepRun[]
  now: number
  onPick: (item: AgendaItem) => void
}

/** The clocks of the other lines that run, soonest first, in view whatever is on the screen; a press brings one to the front. */
export function RunningClocks({ items, runs, now, onPick }: RunningClocksProps) {
  const { plan } = useBench()
  const running = items.flatMap((item) => {
    const startedAt = item.do === 'end' ? (runOf(runs, item)?.startedAt ?? null) : null
    return startedAt === null ? [] : [{ item, startedAt }]
  })
  if (running.length === 0) return null
  return (
    <ul className={styles.clocks} aria-label="Clocks of the other lines">
      {running.map(({ item, startedAt }) => {
        const name = stepText(plan, item.step.id, item.repeat)
        const seconds = item.step.endsBy.by === 'clock' ? runSeconds(item.step) : 0
        return (
          <li key={`${item.unit.id}/${item.step.id}/${item.repeat}`}>
            <button type="button" className={styles.clock} onClick={() => onPick(item)}>
              <LineMark unit={item.unit} size="small" letterOnly />{' '}
              <Timer
                label={`${name}, ${item.letter}`}
                startedAt={startedAt}
                now={now}
                {...(seconds > 0 ? { goalSeconds: seconds } : {})}
              />
            </button>
          </li>
        )
      })}
    </ul>
  )
}
