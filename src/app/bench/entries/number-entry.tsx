import { type ReactNode, useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useOnePress } from '@/app/kit/press/use-one-press.ts'
import { typedNumber } from '@/core/units/typed-number.ts'
import { OddReading, type OddReadingWords } from './odd-reading.tsx'

interface NumberEntryProps {
  label: string
  unit: string
  check: (value: number) => string | undefined
  /** What makes a number that can be an odd one: said before it is kept. */
  odd?: (value: number) => OddReadingWords | null
  /** Names the unfinished text among the session's drafts, so that a reload brings it back. */
  draftName: string
  /** Whether it was kept: what was typed stays until it is. */
  onKeep: (value: number) => Promise<boolean>
  hint?: string
  /** Beside a likelier answer: its button stands back. */
  quiet?: boolean
  children?: ReactNode
}

/** One number and one big button. What was typed and not yet kept survives a reload; a wild number asks before it is kept. */
export function NumberEntry(props: NumberEntryProps) {
  const { label, unit, check, odd, draftName, onKeep, hint, quiet, children } = props
  const { drafts } = useBench()
  const { busy, run } = useOnePress()
  const [asked, setAsked] = useState<number | null>(null)
  const text = drafts.values[draftName] ?? ''
  const read = typedNumber(text, unit)
  const value =
    read.ok && read.value !== null && check(read.value) === undefined ? read.value : null
  const words = value === null || value !== asked ? null : (odd?.(value) ?? null)
  const keep = async () => {
    if (value === null) return
    if (await onKeep(value)) drafts.clear(draftName)
  }
  return (
    <form
      className={styles.entry}
      onSubmit={(submit) => {
        submit.preventDefault()
        if (value !== null && words === null && odd?.(value)) setAsked(value)
        else run(keep)
      }}
    >
      <NumberField
        label={label}
        unit={unit}
        value={value}
        onValue={() => undefined}
        text={text}
        onText={(next) => drafts.set(draftName, next)}
        check={check}
        size="bench"
        {...(hint ? { hint } : {})}
      />
      {children}
      {words ? <OddReading words={words} /> : null}
      <Button
        type="submit"
        kind={quiet || words ? 'plain' : 'primary'}
        size="bench"
        busy={busy}
        means={`${words ? 'keep-odd' : 'keep'}/${draftName}`}
        disabled={value === null}
      >
        {words ? `Keep ${text.trim()} as it is` : 'Keep'}
      </Button>
    </form>
  )
}
