import { useState } from 'react'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { useTableLog } from '@/app/tasting/use-table-log.ts'
import { lostForGood } from '@/core/wording/tasting/alone-text.ts'

/** Where tickets or letters are lost: the session is ended with a reason that stays, and none of its levels is ever told. */
export function NothingToTell({ cups }: { cups: boolean }) {
  const { session } = useTable()
  const log = useTableLog()
  const [open, setOpen] = useState(false)
  const [reason, setReason] = useState('')
  const [tried, setTried] = useState(false)
  const end = async () => {
    setTried(true)
    if (reason.trim() === '') return
    await log({
      kind: 'unsealed',
      about: { kind: 'session', id: session.id },
      lost: reason.trim(),
    })
    setOpen(false)
  }
  return (
    <>
      <div>
        <Button kind="quiet" onPress={() => setOpen(true)}>
          {cups ? 'The tickets are lost' : 'The letters are lost'}
        </Button>
      </div>
      <Dialog
        title="End without knowing which was which?"
        open={open}
        onClose={() => setOpen(false)}
        actions={
          <>
            <Button kind="primary" onPress={end}>
              End it for good
            </Button>
            <Button onPress={() => setOpen(false)}>Look once more</Button>
          </>
        }
      >
        <p>{lostForGood(cups ? 'tickets' : 'letters')}</p>
        <TextField
          label="What happened"
          value={reason}
          onValue={setReason}
          maxLength={300}
          {...(tried && reason.trim() === ''
            ? { problem: 'Say what happened; it stands in the report.' }
            : {})}
        />
      </Dialog>
    </>
  )
}
