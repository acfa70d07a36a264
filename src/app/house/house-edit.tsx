import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { Fold } from '@/app/kit/page/fold.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { draftsOf } from '@/app/services/drafts-of.ts'
import { useServices } from '@/app/services/services.ts'
import { houseChanges, revisedHouse } from '@/core/house/changed-house.ts'
import { editedHouse } from '@/core/house/edited-house.ts'
import { type House, houseInForce } from '@/core/house/house-record.ts'
import { editedTroubleText } from '@/core/wording/house/edited-text.ts'
import { formulaProblemText } from '@/core/wording/plan/formula-problem-text.ts'
import styles from './house.module.css'

/** Changes percents and waits of a house formula: kept as its next state, the one before stays in the history. */
export function HouseEdit({ house }: { house: House }) {
  const { notebook, now, zone } = useServices()
  const draft = useDraft(draftsOf(notebook, `house/${house.id}`, 'a house formula'))
  const revision = houseInForce(house)
  const { values } = draft
  const edited = editedHouse(revision, values)
  const touched = Object.keys(values).length > 0
  const changes =
    edited.ok && (houseChanges(revision, edited.revision).length > 0 || edited.revision.note !== '')
  const keep = async () => {
    if (!edited.ok) return
    await notebook.keepHouse(revisedHouse(house, { ...edited.revision, at: now(), zone }))
    draft.clear()
  }
  const problemOf = (key: string) => {
    const trouble = edited.ok ? undefined : edited.fields.find((one) => one.key === key)
    return trouble && editedTroubleText(trouble)
  }
  const field = (key: string, label: string, unit: string, kept: number) => (
    <NumberField
      key={key}
      label={label}
      unit={unit}
      value={kept}
      text={values[key]}
      onText={(text) => draft.set(key, text)}
      onValue={() => undefined}
      problem={problemOf(key)}
    />
  )
  const tidy = (value: number) => Math.round(value * 100) / 100
  return (
    <Fold name="Change it" result="percents and waits; the state before stays in the history">
      <div className={styles.edit}>
        <FieldRow>
          {revision.formula.ingredients.map(({ id, name, percent }) =>
            field(`percent/${id}`, name, '%', tidy(percent)),
          )}
          {revision.formula.preferments.map(({ id, name, flourSharePercent }) =>
            field(`share/${id}`, `${name}, of all flour`, '%', tidy(flourSharePercent)),
          )}
        </FieldRow>
        <FieldRow>
          {revision.steps
            .filter(({ waitSeconds }) => waitSeconds > 0)
            .map(({ id, name, waitSeconds }) =>
              field(`wait/${id}`, `${name}, wait`, 'min', tidy(waitSeconds / 60)),
            )}
        </FieldRow>
        <TextField
          label="Why (if you like)"
          value={values.note ?? ''}
          maxLength={500}
          onValue={(note) => draft.set('note', note)}
        />
        {edited.ok
          ? null
          : edited.formula.map((problem) => (
              <p key={`${problem.path} ${problem.reason}`} className={styles.off}>
                {formulaProblemText(problem)}
              </p>
            ))}
        <div className={styles.presses}>
          <Button kind="primary" disabled={!changes} onPress={keep}>
            Keep as the next state
          </Button>
          {touched ? <Button onPress={() => draft.clear()}>Leave it as it was</Button> : null}
        </div>
      </div>
    </Fold>
  )
}
