import { SelectField } from '@/app/kit/field/select-field.tsx'
import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { ReadFormulaLine } from '@/core/formula/formula-from-text.ts'
import type { IngredientKind } from '@/core/formula/formula-record.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { lineRefusal } from '@/core/wording/plan/line-refusal.ts'
import { ingredientKindNames } from '@/core/wording/words/ingredient-kind-names.ts'
import styles from './formula-section.module.css'

interface Props {
  lines: readonly ReadFormulaLine[]
  onKind: (name: string, kind: IngredientKind) => void
  /** Takes a line that was not understood out of the text. */
  onLeaveOut: (line: number) => void
}

const kindOptions = (Object.keys(ingredientKindNames) as IngredientKind[]).map((kind) => ({
  value: kind,
  label: ingredientKindNames[kind],
}))

/** Each pasted line as it was understood, its kind to be corrected, or why it was not understood. */
export function PastedLines({ lines, onKind, onLeaveOut }: Props) {
  return (
    <ol className={styles.read} aria-label="What was understood">
      {lines.map((line) => (
        <li key={line.line} {...(line.ok ? {} : { className: styles.refused })}>
          {line.ok ? <Understood line={line} /> : <Refused line={line} />}
          {line.ok ? null : (
            <Button
              size="small"
              kind="quiet"
              label={`Leave out: ${line.text}`}
              onPress={() => onLeaveOut(line.line)}
            >
              Leave it out
            </Button>
          )}
          {line.kind ? (
            <SelectField
              label={`Kind of ${line.name}`}
              hideLabel
              value={line.kind}
              options={kindOptions}
              onValue={(kind) => onKind(line.name, kind)}
            />
          ) : null}
        </li>
      ))}
    </ol>
  )
}

function Understood({ line }: { line: Extract<ReadFormulaLine, { ok: true }> }) {
  const grams = line.grams === null ? '' : `${plainNumber(round(line.grams))} g, `
  return (
    <span>
      <b>{line.name}</b> {grams}
      {plainNumber(round(line.percent))} %{line.fromVolume ? ', taken as 1 g a ml' : ''}
    </span>
  )
}

function Refused({ line }: { line: Extract<ReadFormulaLine, { ok: false }> }) {
  return (
    <>
      <span>
        <WarningMark /> {line.text}
      </span>
      <span>{lineRefusal(line.reason)}</span>
    </>
  )
}

const round = (value: number) => Math.round(value * 100) / 100
