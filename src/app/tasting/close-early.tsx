import { useState } from 'react'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useTable } from './tasting-context.ts'
import { useTableLog } from './use-table-log.ts'

/** Closes a tasting whose ballots are not all in. The reason is kept and said in the report. */
export function CloseEarly() {
  const { session } = useTable()
  const log = useTableLog()
  const [open, setOpen] = useState(false)
  const [reason, setReason] = useState('')
  const close = async () => {
    await log({
      kind: 'tasting-closed',
      about: { kind: 'session', id: session.id },
      reason: reason.trim(),
    })
    setOpen(false)
  }
  return (
    <>
      <Button onPress={() => setOpen(true)}>Close the tasting early</Button>
      <Dialog
        title="Close before every ballot is in?"
        open={open}
        onClose={() => setOpen(false)}
        actions={
          <>
            <Button kind="primary" disabled={reason.trim() === ''} onPress={close}>
              Close the tasting
            </Button>
            <Button onPress={() => setOpen(false)}>Keep it open</Button>
          </>
        }
      >
        <p>What is missing stays missing, and the reason stands in the report.</p>
        <TextField label="Reason" value={reason} onValue={setReason} maxLength={300} />
      </Dialog>
    </>
  )
}
