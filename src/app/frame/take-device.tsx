import { useState } from 'react'
import { useLocation } from 'wouter'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { useUncoveredTrial } from '@/app/kit/page/uncovered-trial.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { logLook } from '@/app/services/log-look.ts'
import { useServices } from '@/app/services/services.ts'
import { useTableDevice } from '@/app/services/table-device.ts'
import { levelsUnknown, sealed, sealedSessions } from '@/core/seal/sealed.ts'

/**
 * The one way from the table to the other places: a deliberate press that the trial's log keeps. Taken covered, or, by a baker
 * who does not taste, with a look behind the codes, unless there is nothing to see yet.
 */
export function TakeDevice({ trialId }: { trialId: string }) {
  const { notebook } = useServices()
  const { take } = useTableDevice()
  const { uncover } = useUncoveredTrial()
  const [asking, setAsking] = useState(false)
  const [mayLook, setMayLook] = useState(false)
  const [, go] = useLocation()
  const ask = async () => {
    const whole = await notebook.wholeTrial(trialId)
    setMayLook(
      whole === undefined ||
        !sealedSessions(whole).some((session) => levelsUnknown(session, whole.events)),
    )
    setAsking(true)
  }
  const away = async (look: boolean) => {
    const whole = await notebook.wholeTrial(trialId)
    const latest = whole?.sessions.toSorted((a, b) => a.number - b.number).at(-1)
    if (whole && look) await logLook(notebook, whole, 'bakes and does not taste (Bench)')
    if (latest && !(look && whole && sealed(whole)))
      await notebook.log({
        kind: 'device-taken',
        trialId,
        sessionId: latest.id,
        about: { kind: 'session', id: latest.id },
      })
    await take()
    if (look) uncover(trialId)
    go(look ? `/trial/${trialId}/bench` : '/')
  }
  return (
    <>
      <Button kind="quiet" size="small" onPress={ask}>
        Take the device from the table
      </Button>
      <Dialog
        title="Take the device from the table?"
        open={asking}
        onClose={() => setAsking(false)}
        actions={
          <>
            <Button kind="primary" onPress={() => away(false)}>
              Take it, all stays covered
            </Button>
            {mayLook ? (
              <Button onPress={() => away(true)}>
                I bake and do not taste: uncover Plan and Bench
              </Button>
            ) : null}
            <Button kind="quiet" onPress={() => setAsking(false)}>
              Leave it here
            </Button>
          </>
        }
      >
        <p>
          Whoever tastes leaves it here. That it was taken is written into the log; a look behind
          the codes is said in the report too, and is only for eyes that do not score. It ends when
          the device is at the table again or the page is loaded again.
        </p>
      </Dialog>
    </>
  )
}
