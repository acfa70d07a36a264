import styles from '@/app/findings/findings.module.css'
import { Choice } from '@/app/kit/field/choice.tsx'
import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { type TableChoices, toldIn } from './table-choices.ts'

interface TableToldProps {
  choices: TableChoices
  scores: ScoreTable
  onChoice: (key: string, text: string) => void
}

/** What the columns cannot say: the factor's name and unit, what got its level separately, the control, the main response. */
export function TableTold({ choices, scores, onChoice }: TableToldProps) {
  const told = toldIn(choices)
  const { factor, levels, responses } = scores
  const control = levels.find(({ name }) => name === told.control)
  const main = responses.find(({ name }) => name === told.main) ?? responses[0]
  return (
    <Section title="What the columns cannot say">
      <div className={styles.form}>
        <FieldRow>
          <TextField
            label="What changed"
            value={choices.factorName ?? factor.name}
            maxLength={80}
            onValue={(text) => onChoice('factorName', text)}
          />
          {factor.ordered ? (
            <TextField
              label="Its unit"
              hint="such as %, g or min"
              value={choices.unitOfMeasure ?? factor.unitOfMeasure}
              maxLength={40}
              onValue={(text) => onChoice('unitOfMeasure', text)}
            />
          ) : null}
          <SelectField
            label="Control"
            value={control ? String(control.name) : ''}
            options={[
              { value: '', label: 'none' },
              ...levels.map(({ name, label }) => ({ value: String(name), label })),
            ]}
            onValue={(level) => onChoice('control', level)}
          />
        </FieldRow>
        <FieldRow>
          {responses.length > 1 ? (
            <SelectField
              label="Main response"
              value={main?.name ?? ''}
              options={responses.map(({ name }) => ({ value: name, label: name }))}
              onValue={(name) => onChoice('main', name)}
            />
          ) : null}
          <SelectField
            label="What is better in it"
            value={told.better}
            options={[
              { value: 'higher', label: 'more is better' },
              { value: 'lower', label: 'less is better' },
              { value: 'neither', label: 'neither' },
            ]}
            onValue={(better) => onChoice('better', better)}
          />
          <NumberField
            label="Margin"
            hint="the smallest difference you would care about"
            value={told.margin}
            text={choices.margin ?? ''}
            onText={(text) => onChoice('margin', text)}
            onValue={() => undefined}
            check={(size) =>
              size > 0 ? undefined : 'Enter a number above zero, or leave it blank.'
            }
          />
        </FieldRow>
        <Choice
          label="What got its level separately"
          row
          value={choices.unit === 'piece' ? 'piece' : 'batch'}
          options={[
            { value: 'batch', label: 'each batch' },
            { value: 'piece', label: 'each piece, parted after the dough was made' },
          ]}
          onValue={(unit) => onChoice('unit', unit)}
        />
      </div>
    </Section>
  )
}
