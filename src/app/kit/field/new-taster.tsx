import { useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { FieldRow } from './field-row.tsx'
import { TextField } from './text-field.tsx'

interface NewTasterProps {
  kitchen: readonly KitchenThing[]
  /** What the button says. */
  press: string
  onAdd: (initials: string) => Promise<void>
}

/** Initials or a code for somebody new; refused at the field when empty or when the kitchen has them, in any case. */
export function NewTaster({ kitchen, press, onAdd }: NewTasterProps) {
  const [initials, setInitials] = useState('')
  const [problem, setProblem] = useState<string>()
  const add = async () => {
    const bare = initials.trim()
    if (bare === '') return setProblem('Write initials or a code.')
    if (hasTaster(kitchen, bare))
      return setProblem(
        `${bare} is in the kitchen already. Choose them above, or write another code.`,
      )
    await onAdd(bare)
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
      <Button onPress={add}>{press}</Button>
    </FieldRow>
  )
}

function hasTaster(kitchen: readonly KitchenThing[], initials: string): boolean {
  const asked = initials.toLowerCase()
  return kitchen.some((thing) => thing.kind === 'taster' && thing.initials.toLowerCase() === asked)
}
