import { useState } from 'react'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'

/** Leaving an unfinished ballot takes a second press, which is logged; what was pressed so far waits. */
export function LeaveBallot({ onLeave }: { onLeave: () => Promise<void> | void }) {
  const [asking, setAsking] = useState(false)
  return (
    <>
      <Button kind="quiet" size="small" onPress={() => setAsking(true)}>
        Leave
      </Button>
      <Dialog
        title="Leave the ballot?"
        open={asking}
        onClose={() => setAsking(false)}
        actions={
          <>
            <Button kind="primary" onPress={() => setAsking(false)}>
              Stay
            </Button>
            <Button onPress={onLeave}>Hand on</Button>
          </>
        }
      >
        <p>
          What you sealed is in, what you pressed waits for you. That the ballot was left is written
          in the log.
        </p>
      </Dialog>
    </>
  )
}
