import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import { titleOf } from './stage-words.ts'

/** The one question before the one thing that cannot be undone. */
export function EraseDialog({
  summary,
  onClose,
}: {
  summary: Summary | null
  onClose: () => void
}) {
  const { notebook } = useServices()
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
              if (summary) await notebook.erase(summary.trialId)
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
        cannot be undone; export it first if you may want it again.
      </p>
    </Dialog>
  )
}
