import { useState } from 'react'
import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import type { Draft } from '@/app/kit/field/use-draft.ts'
import { Button } from '@/app/kit/press/button.tsx'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { typedNumber } from '@/core/units/typed-number.ts'
import { type EntryUnits, fieldIn } from './fields-in-units.ts'
import styles from './kitchen.module.css'
import { fieldProblem, kitchenEntry } from './kitchen-entry.ts'
import type { KitchenChapter } from './kitchen-fields.ts'

interface KitchenFormProps {
  chapter: KitchenChapter
  /** The id of what is changed, or the new one. */
  id: string
  draft: Draft
  others: readonly KitchenThing[]
  /** What temperatures and weights are typed in, from the moment the entry was opened. */
  units: EntryUnits
  onKeep: (thing: KitchenThing) => Promise<void>
  onCancel: () => void
  /** Removes the entry; undefined while it is new. */
  onRemove: (() => Promise<void>) | undefined
  /** Empties a taster's initials and keeps the scores; undefined for all else. */
  onErase: (() => void) | undefined
}

/** The fields of one kitchen entry. What is typed stays as a draft until it is kept or left. */
export function KitchenForm(props: KitchenFormProps) {
  const { chapter, id, draft, others, units, onKeep, onCancel } = props
  const [problems, setProblems] = useState<Record<string, string>>({})
  const keep = async () => {
    const entry = kitchenEntry(chapter, id, draft.values, others, units)
    if (!entry.ok) {
      setProblems(entry.problems)
      return
    }
    await onKeep(entry.thing)
  }
  const textOf = (key: string) => draft.values[key] ?? ''
  const type = (key: string, text: string) => {
    const { [key]: _, ...left } = problems
    setProblems(left)
    draft.set(key, text)
  }
  return (
    <form
      className={styles.form}
      aria-label={`Entry: ${chapter.one}`}
      onSubmit={(submit) => submit.preventDefault()}
      noValidate
    >
      <p className={styles.why}>{chapter.why}</p>
      <FieldRow>
        {chapter.fields
          .map((each) => fieldIn(each, units))
          .map((field, index) =>
            field.type === 'number' ? (
              <NumberField
                key={field.key}
                label={field.required ? field.label : `${field.label} (if known)`}
                {...(field.unit ? { unit: field.unit } : {})}
                {...(field.hint ? { hint: field.hint } : {})}
                value={numberIn(textOf(field.key), field.unit)}
                onValue={() => undefined}
                check={(value) => fieldProblem(field, String(value))}
                text={textOf(field.key)}
                onText={(text) => type(field.key, text)}
                problem={problems[field.key]}
              />
            ) : field.type === 'choice' ? (
              <SelectField
                key={field.key}
                label={field.label}
                {...(field.hint ? { hint: field.hint } : {})}
                value={textOf(field.key)}
                options={field.options ?? []}
                onValue={(value) => type(field.key, value)}
              />
            ) : (
              <TextField
                key={field.key}
                label={field.label}
                {...(field.hint ? { hint: field.hint } : {})}
                value={textOf(field.key)}
                onValue={(text) => type(field.key, text)}
                maxLength={field.key === 'initials' ? 12 : 200}
                problem={problems[field.key]}
                autoFocus={index === 0 && textOf(field.key) === ''}
              />
            ),
          )}
        <TextField
          label="Note (if any)"
          value={textOf('note')}
          onValue={(text) => type('note', text)}
          maxLength={5000}
        />
      </FieldRow>
      <div className={styles.formButtons}>
        <Button kind="primary" type="submit" onPress={keep}>
          Keep
        </Button>
        <Button onPress={onCancel}>Leave it</Button>
        {props.onErase ? (
          <Button kind="quiet" onPress={props.onErase}>
            Erase
          </Button>
        ) : null}
        {props.onRemove ? (
          <Button kind="quiet" onPress={props.onRemove}>
            Remove
          </Button>
        ) : null}
      </div>
    </form>
  )
}

function numberIn(text: string, unit: string | undefined): number | null {
  const read = typedNumber(text, unit)
  return read.ok ? read.value : null
}
