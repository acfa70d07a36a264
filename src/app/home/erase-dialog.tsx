import { useState } from 'react'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { Summary } from '@/notebook/summary-record.ts'
import { titleOf } from './stage-words.ts'

/** The one question before the one thing that cannot be undone. */
export function EraseDialog({
  summary,
  onErase,
  onClose,
}: {
  summary: Summary | null
  /** False where it was taken back meanwhile, and stays. */
  onErase: (trialId: string) => Promise<boolean>
  onClose: () => void
}) {
  const [stays, setStays] = useState(false)
  if (stays)
    return (
      <Dialog
        title="It was taken back"
        open
        onClose={onClose}
        actions={<Button onPress={onClose}>Close</Button>}
      >
        <p>
          “{summary ? titleOf(summary) : ''}” was taken out of the bin in another window and was not
          erased.
        </p>
      </Dialog>
    )
  return (
    <Dialog
      title="Erase this trial for good?"
      open={summary !== null}
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Keep it in the bin</Button>
          <Button
            kind="primary"
            onPress={async () => {
              const erased = summary === null || (await onErase(summary.trialId))
              if (erased) onClose()
              else setStays(true)
            }}
          >
            Erase it
          </Button>
        </>
      }
    >
      <p>
        “{summary ? titleOf(summary) : ''}” goes with its log, its ballots and its photos. This
        cannot be undone. If you may want it again, choose “Back up all” in the menu first: an
        exported trial file carries no photos.
      </p>
    </Dialog>
  )
}
