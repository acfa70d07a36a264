import styles from '@/app/findings/findings.module.css'
import { Choice } from '@/app/kit/field/choice.tsx'
import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { betterKey, marginKey, type TableChoices, toldIn } from './table-choices.ts'

interface TableToldProps {
  choices: TableChoices
  scores: ScoreTable
  onChoice: (key: string, text: string) => void
}

/** What the columns cannot say: the factor's name and unit, what got its level separately, the control, the main response. */
export function TableTold({ choices, scores, onChoice }: TableToldProps) {
  const told = toldIn(
    choices,
    scores.responses.map(({ id }) => id),
  )
  const { factor, levels, responses } = scores
  const control = levels.find(({ id }) => id === `${told.control}`)
  const main = responses.find(({ id }) => id === told.main) ?? responses[0]
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
            value={control?.id ?? ''}
            options={[
              { value: '', label: 'none' },
              ...levels.map(({ id, label }) => ({ value: id, label })),
            ]}
            onValue={(level) => onChoice('control', level)}
          />
        </FieldRow>
        {responses.length > 1 ? (
          <FieldRow>
            <SelectField
              label="Main response"
              hint="A column of numbers that is no response is left out over the column."
              value={main?.id ?? ''}
              options={responses.map(({ id, name }) => ({ value: id, label: name }))}
              onValue={(id) => onChoice('main', id)}
            />
          </FieldRow>
        ) : null}
        {responses.map(({ id, name }) => (
          <ResponseTold key={id} id={id} name={name} choices={choices} onChoice={onChoice} />
        ))}
        <Choice
          label="What the levels are"
          row
          value={choices.levelsAre === 'choice' ? 'choice' : 'measured'}
          options={[
            { value: 'measured', label: 'measured, where all are numbers' },
            { value: 'choice', label: 'names, such as product codes' },
          ]}
          onValue={(are) => onChoice('levelsAre', are)}
        />
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

interface ResponseToldProps {
  id: string
  name: string
  choices: TableChoices
  onChoice: (key: string, text: string) => void
}

/** Which way one response is better, and its margin; unknown until it is said. */
function ResponseTold({ id, name, choices, onChoice }: ResponseToldProps) {
  const { better, margin } = toldIn(choices, [id]).responses[id] ?? usualTold
  return (
    <FieldRow>
      <SelectField
        label={`What is better in ${name}`}
        value={better}
        options={[
          { value: 'neither', label: 'not said: no direction is claimed' },
          { value: 'higher', label: 'more is better' },
          { value: 'lower', label: 'less is better' },
        ]}
        onValue={(chosen) => onChoice(betterKey(id), chosen)}
      />
      <NumberField
        label={`Margin of ${name}`}
        hint="the smallest difference you would care about"
        value={margin}
        text={choices[marginKey(id)] ?? ''}
        onText={(text) => onChoice(marginKey(id), text)}
        onValue={() => undefined}
        check={(size) => (size > 0 ? undefined : 'Enter a number above zero, or leave it blank.')}
      />
    </FieldRow>
  )
}

const usualTold = { better: 'neither', margin: null } as const
