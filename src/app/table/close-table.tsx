import { useState } from 'react'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { markOpenTable } from '@/app/services/open-tables.ts'
import { useServices } from '@/app/services/services.ts'
import { closeTable, forgetTable } from '@/exchange/close-table.ts'
import type { OwnTable } from '@/exchange/table-store.ts'
import { tableServices } from './table-services.ts'

/** Closes the table for good, asked twice; where the hub is not reached it can be forgotten here alone. */
export function CloseTable({ own, toCome }: { own: OwnTable; toCome: number }) {
  const services = useServices()
  const { notebook } = services
  const [asking, setAsking] = useState(false)
  const [away, setAway] = useState(false)
  const done = () => markOpenTable(notebook, `own/${own.trialId}`, null)
  const close = async () => {
    const closed = await closeTable(tableServices(services), own)
    if (!closed.ok) return setAway(true)
    await done()
  }
  const forget = async () => {
    await forgetTable(tableServices(services), own.trialId)
    await done()
  }
  return (
    <>
      <Button onPress={() => setAsking(true)}>Close the table</Button>
      <Dialog
        title="Close the table?"
        open={asking}
        onClose={() => setAsking(false)}
        actions={
          <>
            <Button kind="primary" onPress={close}>
              Close it for good
            </Button>
            {away ? <Button onPress={forget}>Forget it here alone</Button> : null}
            <Button onPress={() => setAsking(false)}>Leave it open</Button>
          </>
        }
      >
        <p>
          Its messages are removed from the hub and every code ends. This notebook keeps everything
          that came in.
        </p>
        {toCome > 0 ? (
          <p>
            {toCome === 1 ? 'One entry' : `${toCome} entries`} of other devices did not come in yet.
            They stay on those devices.
          </p>
        ) : null}
        {away ? (
          <p>
            The hub was not reached, so nothing was removed there. Try again when it is back, or
            forget the table here alone: what the hub keeps it cannot read.
          </p>
        ) : null}
      </Dialog>
    </>
  )
}
