import { useState } from 'react'
import { Button } from '@/app/kit/button.tsx'
import { FieldRow } from '@/app/kit/field-row.tsx'
import { TextField } from '@/app/kit/text-field.tsx'
import { useServices } from '@/app/services/services.ts'
import { usePlanPage, usePlanStore } from './plan-page-context.ts'

/** A new taster, kept in the kitchen and taken into this plan at once. */
export function AddTaster() {
  const { notebook, newId } = useServices()
  const store = usePlanStore()
  const kitchen = usePlanPage((page) => page.kitchen)
  const [initials, setInitials] = useState('')
  const [problem, setProblem] = useState<string>()
  const add = async () => {
    const bare = initials.trim()
    const taken = kitchen.some(
      (thing) => thing.kind === 'taster' && thing.initials.toLowerCase() === bare.toLowerCase(),
    )
    if (bare === '') return setProblem('Write initials or a code.')
    if (taken)
      return setProblem(
        `${bare} is in the kitchen already. Choose them above, or write another code.`,
      )
    const id = newId()
    await notebook.keepKitchenThing({ id, kind: 'taster', initials: bare })
    store.getState().change((plan) => ({
      ...plan,
      tasters: [...plan.tasters, { tasterId: id, knows: false }],
    }))
    setInitials('')
    setProblem(undefined)
  }
  return (
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
      <Button onPress={add}>Add taster</Button>
    </FieldRow>
  )
}
