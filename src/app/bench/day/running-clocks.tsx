import { useBench } from '@/app/bench/bench-context.ts'
import styles from '@/app/bench/bench-foot.module.css'
import { LineMark } from '@/app/bench/line-mark.tsx'
import { lineText, unitName } from '@/app/bench/line-name.ts'
import { Timer } from '@/app/kit/time/timer.tsx'
import { useServices } from '@/app/services/services.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import type { StepRun } from '@/core/session/step-runs.ts'
import { stepText } from '@/core/wording/bench/event-text.ts'
import { clockOf, runOf } from './next-on-line.ts'

interface RunningClocksProps {
  items: readonly AgendaItem[]
  runs: readonly StepRun[]
  onPick: (item: AgendaItem) => void
}

/**
 * The clocks of the other lines that run, soonest first, in view whatever is on the screen; a press brings one to the front.
 * They stand in rows; of more than two the third looks out from below, to be scrolled to.
 */
export function RunningClocks({ items, runs, onPick }: RunningClocksProps) {
  const { plan, session } = useBench()
  const { now: clock } = useServices()
  const running = items.flatMap((item) => {
    const run = item.do === 'end' ? runOf(runs, item) : undefined
    const at = run ? clockOf(run) : null
    return at ? [{ item, ...at }] : []
  })
  if (running.length === 0) return null
  return (
    <ul className={styles.clocks} aria-label="Clocks of the other lines">
      {running.map(({ item, startedAt, goalSeconds }) => {
        const name = stepText(plan, item.step.id, item.repeat)
        const { which } = unitName(session, plan, item.unit)
        const seconds = item.step.endsBy.by === 'clock' ? goalSeconds : 0
        return (
          <li key={`${item.unit.id}/${item.step.id}/${item.repeat}`}>
            <button
              type="button"
              className={styles.clock}
              data-means={`to the front ${item.unit.id}`}
              onClick={() => onPick(item)}
            >
              <LineMark unit={item.unit} size="small" letterOnly />{' '}
              <span className={styles.reading}>
                <Timer
                  label={`${name}, ${lineText(session, plan, item.unit)}`}
                  startedAt={startedAt}
                  clock={clock}
                  {...(seconds > 0 ? { goalSeconds: seconds } : {})}
                />
                {which === '' ? null : <span className={styles.which}>{which}</span>}
              </span>
            </button>
          </li>
        )
      })}
    </ul>
  )
}
