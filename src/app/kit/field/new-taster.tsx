import { useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { useOnePress } from '@/app/kit/press/use-one-press.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { FieldRow } from './field-row.tsx'
import { TextField } from './text-field.tsx'

interface NewTasterProps {
  kitchen: readonly KitchenThing[]
  /** What the button says. */
  press: string
  onAdd: (initials: string) => Promise<void>
}

const longestInitials = 12

/**
 * Initials or codes for somebody new, several parted by commas; Enter adds them. Refused at the field, all of them, when one
 * is empty or too long, stands twice, or is in the kitchen already, in any case.
 */
export function NewTaster({ kitchen, press, onAdd }: NewTasterProps) {
  const [initials, setInitials] = useState('')
  const [problem, setProblem] = useState<string>()
  const { run } = useOnePress()
  const add = async () => {
    const names = initialsIn(initials)
    const wrong = problemOf(names, kitchen)
    if (wrong !== undefined) return setProblem(wrong)
    for (const name of names) await onAdd(name)
    setInitials('')
    setProblem(undefined)
  }
  return (
    <form
      onSubmit={(submit) => {
        submit.preventDefault()
        run(add)
      }}
    >
      <FieldRow>
        <TextField
          label="New taster"
          hint="Initials or a code, never a full name; several with commas: AN, BO, CY."
          value={initials}
          onValue={(next) => {
            setInitials(next)
            setProblem(undefined)
          }}
          maxLength={200}
          problem={problem}
        />
        <Button type="submit">{press}</Button>
      </FieldRow>
    </form>
  )
}

function initialsIn(text: string): string[] {
  return text
    .split(/[,;\n]/)
    .map((one) => one.trim())
    .filter(Boolean)
}

function problemOf(names: readonly string[], kitchen: readonly KitchenThing[]): string | undefined {
  if (names.length === 0) return 'Write initials or a code.'
  const long = names.find((name) => name.length > longestInitials)
  if (long !== undefined)
    return `${long} is longer than ${longestInitials} letters: initials or a code will do.`
  const lower = names.map((name) => name.toLowerCase())
  const twice = names.find((_, at) => lower.indexOf(lower[at] ?? '') !== at)
  if (twice !== undefined) return `${twice} stands twice; take one out.`
  const known = names.filter((name) => hasTaster(kitchen, name))
  if (known.length > 0)
    return `${listText(known)} ${known.length === 1 ? 'is' : 'are'} in the kitchen already. Choose them above, or write another code.`
  return undefined
}

function hasTaster(kitchen: readonly KitchenThing[], initials: string): boolean {
  const asked = initials.toLowerCase()
  return kitchen.some((thing) => thing.kind === 'taster' && thing.initials.toLowerCase() === asked)
}
