import { useLiveQuery } from 'dexie-react-hooks'
import { useState } from 'react'
import { useHashLocation } from 'wouter/use-hash-location'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { markOpenTable } from '@/app/services/open-tables.ts'
import { useServices } from '@/app/services/services.ts'
import { leaveTable } from '@/exchange/close-table.ts'
import type { JoinedTable } from '@/exchange/table-store.ts'
import styles from './table.module.css'
import { tableServices } from './table-services.ts'

/** How many entries of this device wait until the baker's device has said that they are in. */
export function useWaiting({ table }: JoinedTable): number {
  const { store } = tableServices(useServices())
  return useLiveQuery(() => store.waiting.where({ table }).count(), [store, table]) ?? 0
}

export function waitsText(waits: number): string {
  if (waits === 0) return 'All that was written here is with the baker.'
  return waits === 1 ? 'One entry waits to go.' : `${waits} entries wait to go.`
}

/** Leaves the table, asked twice where something waits to go. */
export function Leave({ joined, waits }: { joined: JoinedTable; waits: number }) {
  const services = useServices()
  const [, navigate] = useHashLocation()
  const [asking, setAsking] = useState(false)
  const leave = async () => {
    await leaveTable(tableServices(services), joined.table)
    await markOpenTable(services.notebook, `joined/${joined.table}`, null)
    if (joined.trialId) {
      await markOpenTable(services.notebook, `helps/${joined.trialId}`, null)
      await markOpenTable(services.notebook, `plan/${joined.trialId}`, null)
    }
    navigate('/')
  }
  return (
    <>
      <div className={styles.actions}>
        <Button onPress={() => (waits > 0 ? setAsking(true) : leave())}>Leave the table</Button>
      </div>
      <Dialog
        title="Leave the table?"
        open={asking}
        onClose={() => setAsking(false)}
        actions={
          <>
            <Button kind="primary" onPress={leave}>
              Leave all the same
            </Button>
            <Button onPress={() => setAsking(false)}>Stay</Button>
          </>
        }
      >
        <p>
          {waitsText(waits)} Whatever leaves unsent never comes to the baker; what was written into
          the trial stays in this notebook.
        </p>
      </Dialog>
    </>
  )
}
