import { useLiveQuery } from 'dexie-react-hooks'
import { NewTaster } from '@/app/kit/field/new-taster.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import styles from '@/app/tasting/seat/tasting.module.css'
import { useTable } from './tasting-context.ts'
import { useTableLog } from './use-table-log.ts'

/** Somebody who came without being planned: picked from the kitchen or added to it, then offered a dealt order of codes. */
export function LateTaster() {
  const { notebook, newId } = useServices()
  const { state } = useTable()
  const log = useTableLog()
  const kitchen = useLiveQuery(() => notebook.kitchen(), [notebook]) ?? []
  const known = kitchen.filter((thing) => thing.kind === 'taster')
  const here = new Set(state.tasters.map(({ tasterId }) => tasterId))
  const others = known.filter(({ id, initials: name }) => !here.has(id) && name !== '')
  const arrive = (tasterId: string) =>
    log({ kind: 'present', about: { kind: 'taster', id: tasterId } })
  const add = async (initials: string) => {
    const id = newId()
    await notebook.keepKitchenThing({ id, kind: 'taster', initials })
    await arrive(id)
  }
  return (
    <details className={styles.mend}>
      <summary>Somebody else has come to taste</summary>
      <div className={styles.stack}>
        {others.length > 0 ? (
          <div className={styles.seats}>
            {others.map((taster) => (
              <Button key={taster.id} onPress={() => arrive(taster.id)}>
                {taster.initials}
              </Button>
            ))}
          </div>
        ) : null}
        <NewTaster kitchen={kitchen} press="Add to the table" onAdd={add} />
      </div>
    </details>
  )
}
