import { LogPresses, type LogPressesProps } from '@/app/bench/day/log-presses.tsx'
import look from '@/app/bench/day/now.module.css'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { sessionUnsealed } from '@/core/seal/sealed.ts'
import { nextSession } from '@/core/whole-trial/next-session.ts'
import styles from './bench.module.css'
import { useBench } from './bench-context.ts'
import { BenchFoot } from './bench-foot.tsx'
import { EndOfDay } from './end/end-of-day.tsx'

interface AllDoneProps extends Omit<LogPressesProps, 'item' | 'unit'> {
  unit: LogPressesProps['unit'] | null
  everything: boolean
}

/**
 * Where to go when nothing is left to do: what of the day is still missing, then to the tasting, or, with that behind, to the next
 * planned session or the findings.
 */
export function AllDone({ everything, unit, ...presses }: AllDoneProps) {
  const { whole, session } = useBench()
  const next = nextSession(whole)
  const tasted = sessionUnsealed(whole.events, session.id)
  const place = tasted ? (next !== null ? 'plan' : 'findings') : 'tasting'
  return (
    <>
      <section className={look.now} aria-label="Now">
        <div className={look.what}>
          <h2 className={look.nowTitle} {...landing}>
            {everything ? 'All steps are done' : 'This dough is through'}
          </h2>
        </div>
        {everything ? <EndOfDay onEnter={presses.onEnter} /> : null}
        {tasted && next !== null ? (
          <p className={styles.then}>Session {next} begins on the Plan page.</p>
        ) : null}
        {unit ? <LogPresses item={null} unit={unit} {...presses} /> : null}
      </section>
      <BenchFoot>
        <LinkButton href={`#/trial/${whole.trial.id}/${place}`} kind="primary" size="bench">
          To the {place}
        </LinkButton>
      </BenchFoot>
    </>
  )
}
