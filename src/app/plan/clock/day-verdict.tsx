import { Button } from '@/app/kit/press/button.tsx'
import { usePlanActions } from '@/app/plan/page/plan-page-context.ts'
import type { DayFound } from '@/app/worker/clock-worker.ts'
import { mendedPlan } from '@/core/clock-plan/mended-plan.ts'
import { shownMends } from '@/core/clock-plan/search/mend.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { offSentence } from '@/core/wording/plan/clock-day-text.ts'
import {
  clockPlanSentences,
  culpritSentence,
  marksSentence,
  mendText,
  nightSentence,
} from '@/core/wording/plan/clock-plan-text.ts'
import styles from './clock-page.module.css'

interface Props {
  day: DayFound
  plan: Plan
  session: Session
  searching: boolean
}

/** How good the day is and how sure; where waits are off, which, what collides, and the smallest mends as presses. */
export function DayVerdict({ day, plan, session, searching }: Props) {
  const { changeSaid } = usePlanActions()
  const { clock, nothing, toKeep, kept, waits, marks } = day
  const nameOf = (batchId: string) => doughName(plan, session, batchId)
  const off = offSentence(waits, nameOf)
  const mends = shownMends(clock?.mends ?? [])
  const split = clock && nightSentence(clock, plan, nameOf)
  return (
    <div className={styles.verdict}>
      {off ? (
        <p className={styles.off}>
          <span aria-hidden="true">◆</span> {off}
        </p>
      ) : null}
      {split ? (
        <p className={styles.off}>
          <span aria-hidden="true">◆</span> {split}
        </p>
      ) : null}
      {nothing ? (
        <p className={styles.off}>
          <span aria-hidden="true">◆</span> No plan was found, not even with waits far off. Take
          more time, fewer flights or levels, or another order; the quick first plan stands here
          meanwhile.
        </p>
      ) : null}
      <p role="status">
        {clock
          ? clockPlanSentences(clock, plan).join(' ')
          : searching
            ? 'A first plan; a better one is being looked for.'
            : 'A first plan.'}
      </p>
      {marks ? <p>{marksSentence(marks, nameOf)}</p> : null}
      {clock && !clock.fits ? <p>{culpritSentence(clock.culprits, plan)}</p> : null}
      {mends.length > 0 ? (
        <ul className={styles.mends}>
          {mends.map((mend) => {
            const words = mendText(mend, plan)
            const press = mendedPlan(plan, mend) !== null
            return (
              <li key={words}>
                {press ? (
                  <Button
                    onPress={() =>
                      changeSaid(`Done: ${words}`, (now) => mendedPlan(now, mend) ?? now)
                    }
                  >
                    {words}
                  </Button>
                ) : (
                  <span>{words}</span>
                )}
              </li>
            )
          })}
        </ul>
      ) : null}
      {kept ? (
        <p>These times are kept: Bench, fairness check and day follow them.</p>
      ) : toKeep && clock ? (
        <Button
          kind="primary"
          onPress={() =>
            changeSaid('These times are kept: the Bench follows them.', (now) => ({
              ...now,
              day: { ...now.day, kept: toKeep },
            }))
          }
        >
          Keep these times
        </Button>
      ) : null}
    </div>
  )
}

/** A dough by its level, or by its number where it serves all. */
export function doughName(plan: Plan, session: Session, batchId: string): string {
  const levelId = session.batches.find(({ id }) => id === batchId)?.levelId
  const level = plan.levels.find(({ id }) => id === levelId)
  return level
    ? `${level.label || level.value}`
    : `Dough ${session.dealt.doughOrder.indexOf(batchId) + 1}`
}
