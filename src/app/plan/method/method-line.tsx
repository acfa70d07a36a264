import { InlinePress } from '@/app/kit/press/inline-press.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { methodLine } from '@/core/wording/plan/method-line.ts'
import styles from './method-line.module.css'

/** The method as a line of time: each step with what hands do, what waits, and when it begins after the mix. A press opens its fields. */
export function MethodLine() {
  const steps = usePlanPage((page) => page.plan.steps)
  const { jumpTo } = usePlanActions()
  const line = methodLine(steps)
  const most = Math.max(
    1,
    ...line.map(({ handsSeconds, waitSeconds }) => handsSeconds + waitSeconds),
  )
  const share = (seconds: number) => `${(100 * seconds) / most}%`
  return (
    <ol className={styles.line} aria-label="Method, in the order of the work">
      {line.map((step, index) => (
        <li key={step.id} className={styles.step}>
          <span className={styles.clock}>{step.begins}</span>
          <span>
            <InlinePress onPress={() => jumpTo(`/steps/${index}/name`)}>{step.name}</InlinePress>
          </span>
          <span className={styles.bar} aria-hidden="true">
            <i className={styles.hands} style={{ inlineSize: share(step.handsSeconds) }} />
            <i className={styles.wait} style={{ inlineSize: share(step.waitSeconds) }} />
          </span>
          <span className={styles.times}>{step.times}</span>
        </li>
      ))}
    </ol>
  )
}
