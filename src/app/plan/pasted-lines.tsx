import { SelectField } from '@/app/kit/select-field.tsx'
import { WarningMark } from '@/app/kit/warning-mark.tsx'
import type { ReadFormulaLine } from '@/core/formula/formula-from-text.ts'
import type { Ingredient, IngredientKind } from '@/core/formula/formula-record.ts'
import { lineRefusal } from '@/core/wording/line-refusal.ts'
import { plainNumber } from '@/core/wording/number-text.ts'
import styles from './formula-section.module.css'
import { ingredientKindNames } from './ingredient-kind-names.ts'

interface Props {
  lines: readonly ReadFormulaLine[]
  ingredients: readonly Ingredient[]
  onKind: (name: string, kind: IngredientKind) => void
}

const kindOptions = (Object.keys(ingredientKindNames) as IngredientKind[]).map((kind) => ({
  value: kind,
  label: ingredientKindNames[kind],
}))

/** Each pasted line as it was understood, its kind to be corrected, or why it was not understood. */
export function PastedLines({ lines, ingredients, onKind }: Props) {
  return (
    <ol className={styles.read} aria-label="What was understood">
      {lines.map((line) => {
        if (!line.ok)
          return (
            <li key={line.line} className={styles.refused}>
              <span>
                <WarningMark /> {line.text}
              </span>
              <span>{lineRefusal(line.reason)}</span>
            </li>
          )
        const one = ingredients.find(({ id }) => id === line.ingredientId)
        const grams = line.grams === null ? '' : `${plainNumber(round(line.grams))} g, `
        return (
          <li key={line.line}>
            <span>
              <b>{one?.name}</b> {grams}
              {plainNumber(round(line.percent))} %{line.fromVolume ? ', taken as 1 g a ml' : ''}
            </span>
            {one ? (
              <SelectField
                label={`Kind of ${one.name}`}
                hideLabel
                value={one.kind}
                options={kindOptions}
                onValue={(kind) => onKind(one.name, kind)}
              />
            ) : null}
          </li>
        )
      })}
    </ol>
  )
}

const round = (value: number) => Math.round(value * 100) / 100
