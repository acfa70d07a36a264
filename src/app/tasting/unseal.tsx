import { useState } from 'react'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { dayClosed, dayMissing, isNothingMissing } from '@/core/session/day-missing.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { missingAtTableText } from '@/core/wording/bench/day-missing-text.ts'
import { stillMissing } from '@/core/wording/bench/still-missing.ts'
import { useTable } from './tasting-context.ts'
import { useTableLog } from './use-table-log.ts'

/** The unsealing, for good: the one press at the table that cannot be taken back, so it is asked for twice. */
export function Unseal() {
  const { whole, session, state } = useTable()
  const log = useTableLog()
  const events = eventsOfSession(whole.events, session.id)
  const missing = dayMissing(session, planOfSession(whole, session), events)
  const open = !isNothingMissing(missing) && !dayClosed(events)
  const [asking, setAsking] = useState(false)
  return (
    <>
      <Button
        kind={state.mayUnseal.ok ? 'primary' : 'plain'}
        disabled={!state.mayUnseal.ok}
        onPress={() => setAsking(true)}
      >
        Unseal the codes
      </Button>
      <Dialog
        title="Unseal the codes?"
        open={asking}
        onClose={() => setAsking(false)}
        actions={
          <>
            <Button
              kind="primary"
              onPress={() => log({ kind: 'unsealed', about: { kind: 'session', id: session.id } })}
            >
              Unseal for good
            </Button>
            <Button onPress={() => setAsking(false)}>Keep them sealed</Button>
          </>
        }
      >
        <p>
          {stillMissing(state, whole.kitchen)} Afterwards no ballot can be added or changed, and the
          codes cannot be sealed again.
        </p>
        {open ? (
          <p>
            {missingAtTableText(missing)} It can still be logged at the bench; once the codes are
            open, the report says what is missing.
          </p>
        ) : null}
      </Dialog>
    </>
  )
}
