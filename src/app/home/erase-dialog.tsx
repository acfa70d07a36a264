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
  onErase: (trialId: string) => Promise<void>
  onClose: () => void
}) {
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
              if (summary) await onErase(summary.trialId)
              onClose()
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
