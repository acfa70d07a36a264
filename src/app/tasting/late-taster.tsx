import { useLiveQuery } from 'dexie-react-hooks'
import { useState } from 'react'
import { Button } from '@/app/kit/button.tsx'
import { FieldRow } from '@/app/kit/field-row.tsx'
import { TextField } from '@/app/kit/text-field.tsx'
import { useServices } from '@/app/services/services.ts'
import styles from './tasting.module.css'
import { useTable } from './tasting-context.ts'
import { useTableLog } from './use-table-log.ts'

/** Somebody who came without being planned: picked from the kitchen or added to it, then offered a dealt order of codes. */
export function LateTaster() {
  const { notebook, newId } = useServices()
  const { state } = useTable()
  const log = useTableLog()
  const [initials, setInitials] = useState('')
  const [problem, setProblem] = useState<string>()
  const kitchen = useLiveQuery(() => notebook.kitchen(), [notebook]) ?? []
  const known = kitchen.filter((thing) => thing.kind === 'taster')
  const here = new Set(state.tasters.map(({ tasterId }) => tasterId))
  const others = known.filter(({ id, initials: name }) => !here.has(id) && name !== '')
  const arrive = (tasterId: string) =>
    log({ kind: 'present', about: { kind: 'taster', id: tasterId } })
  const add = async () => {
    const bare = initials.trim()
    if (bare === '') return setProblem('Write initials or a code.')
    if (known.some((taster) => taster.initials.toLowerCase() === bare.toLowerCase()))
      return setProblem(`${bare} is known already. Pick them above, or write another code.`)
    const id = newId()
    await notebook.keepKitchenThing({ id, kind: 'taster', initials: bare })
    await arrive(id)
    setInitials('')
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
        <FieldRow>
          <TextField
            label="New taster"
            hint="Initials or a code, never a full name."
            value={initials}
            onValue={(next) => {
              setInitials(next)
              setProblem(undefined)
            }}
            maxLength={12}
            problem={problem}
          />
          <Button onPress={add}>Add to the table</Button>
        </FieldRow>
      </div>
    </details>
  )
}
