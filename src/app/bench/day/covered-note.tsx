import { useBench } from '@/app/bench/bench-context.ts'
import look from '@/app/bench/day/now.module.css'
import { useUncoveredTrial } from '@/app/kit/page/uncovered-trial.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { logLook } from '@/app/services/log-look.ts'
import { useOpenTables } from '@/app/services/open-tables.ts'
import { useServices } from '@/app/services/services.ts'
import { lostBecause } from '@/core/seal/sealed.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'

/** While people taste the bench goes on with letters alone; whoever does not taste says so, and the log has it. */
export function CoveredNote() {
  const { whole, session, covered, unknown } = useBench()
  const { notebook } = useServices()
  const { uncover } = useUncoveredTrial()
  const helps = useOpenTables()?.helps.has(whole.trial.id) ?? false
  if (!covered) return null
  if (unknown && helps)
    return (
      <div className={look.coveredNote}>
        <p>
          <b>Which level a letter is stands on the baker’s device</b>; this one works by letters.
          Doughs are weighed at the bench, not here.
        </p>
      </div>
    )
  if (unknown)
    return (
      <div className={look.coveredNote}>
        <p>
          {lostBecause(whole.events, session.id) === null ? (
            <>
              <b>Which level a letter is waits under the cups</b>; not even this notebook knows it
              before the tickets are turned.
            </>
          ) : (
            <>
              <b>Which level a letter was cannot be told any more</b>: the tickets are lost.
            </>
          )}
        </p>
      </div>
    )
  const { tasters } = tastingState(whole, session.id)
  const answered = tasters.reduce((sum, each) => sum + each.answered, 0)
  const expected = tasters.reduce((sum, each) => sum + each.expected, 0)
  return (
    <div className={look.coveredNote}>
      <p>
        <b>What each letter is stays covered</b> while people taste; {answered} of {expected}{' '}
        ballots in.
      </p>
      <Button
        onPress={async () => {
          await logLook(notebook, whole, 'bakes and does not taste (Bench)')
          uncover(whole.trial.id)
        }}
      >
        I do not taste
      </Button>
    </div>
  )
}
