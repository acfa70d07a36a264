import { type ReactNode, useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { BenchFoot } from '@/app/bench/bench-foot.tsx'
import { OddReading, type OddReadingWords } from '@/app/bench/entries/odd-reading.tsx'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useOnePress } from '@/app/kit/press/use-one-press.ts'
import { typedNumber } from '@/core/units/typed-number.ts'
import { KeyPad } from './key-pad.tsx'
import pad from './pad-entry.module.css'

interface PadEntryProps {
  label: string
  unit: string
  check: (value: number) => string | undefined
  /** What makes a number that can be an odd one: said before it is kept. */
  odd?: (value: number) => OddReadingWords | null
  /** Said of a number as it is typed. */
  says?: (value: number) => ReactNode
  /** Names the unfinished text among the session's drafts, so that a reload brings it back. */
  draftName: string
  /** Whether it was kept: what was typed stays until it is. */
  onKeep: (value: number) => Promise<boolean>
  /** What the main press keeps while nothing is typed, and its words. */
  planned?: { value: number; words: string; means: string }
  hint?: string
  signed?: boolean
  /** Beside the main press instead of the named undo. */
  beside?: ReactNode
  /** Beside the field, such as what is measured. */
  besideField?: ReactNode
  /** Over the field. */
  children?: ReactNode
  /** Under the keys. */
  below?: ReactNode
}

/** One number, keys of our own, and the main press that keeps it. A wild number asks before it is kept. */
export function PadEntry(props: PadEntryProps) {
  const { label, unit, check, odd, draftName, onKeep, planned, says, signed = false } = props
  const { drafts } = useBench()
  const { busy, run } = useOnePress()
  const [asked, setAsked] = useState<number | null>(null)
  const text = drafts.values[draftName] ?? ''
  const read = typedNumber(text, unit)
  const value =
    read.ok && read.value !== null && check(read.value) === undefined ? read.value : null
  const words = value === null || value !== asked ? null : (odd?.(value) ?? null)
  const type = (next: string) => drafts.set(draftName, next)
  const keep = async () => {
    if (value === null) return
    if (await onKeep(value)) drafts.clear(draftName)
  }
  const shown = `${text.trim()} ${unit}`.trim()
  const takesPlan = planned !== undefined && text.trim() === ''
  return (
    <form
      className={pad.form}
      onSubmit={(submit) => {
        submit.preventDefault()
        if (takesPlan) run(() => onKeep(planned.value))
        else if (value !== null && words === null && odd?.(value)) setAsked(value)
        else run(keep)
      }}
    >
      <div className={pad.fields}>
        {props.children}
        <div className={pad.field}>
          <NumberField
            label={label}
            unit={unit}
            value={value}
            onValue={() => undefined}
            text={text}
            onText={type}
            check={check}
            size="bench"
            ownKeys
            {...(props.hint ? { hint: props.hint } : {})}
          />
          {props.besideField}
        </div>
        <div className={pad.says} aria-live="polite">
          {words ? <OddReading words={words} /> : value === null ? null : says?.(value)}
        </div>
        <KeyPad text={text} onText={type} signed={signed} />
        {props.below}
      </div>
      <BenchFoot {...(props.beside ? { beside: props.beside } : {})}>
        <Button
          type="submit"
          kind={words ? 'plain' : 'primary'}
          size="bench"
          busy={busy}
          means={takesPlan ? planned.means : `${words ? 'keep-odd' : 'keep'}/${draftName}`}
          disabled={!takesPlan && value === null}
        >
          <span className={styles.keepWords}>
            {takesPlan
              ? planned.words
              : value === null
                ? 'Type the reading'
                : words
                  ? `Keep ${shown} as it is`
                  : `Keep ${shown}`}
          </span>
        </Button>
      </BenchFoot>
    </form>
  )
}
