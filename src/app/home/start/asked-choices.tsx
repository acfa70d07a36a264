import type { ReactNode } from 'react'
import { Section } from '@/app/kit/page/section.tsx'
import { ChoiceRow } from './choice-row.tsx'
import type { StartChoice } from './start-choices.ts'
import styles from './start-place.module.css'

interface AskedChoicesProps<Value> {
  title: string
  choices: readonly StartChoice<Value>[]
  value: Value | null
  onValue: (value: Value) => void
  children?: ReactNode
}

/** One question of the start: each answer one press. */
export function AskedChoices<Value extends string>(props: AskedChoicesProps<Value>) {
  const { title, choices, value, onValue, children } = props
  return (
    <Section title={title}>
      <div className={styles.choices}>
        {choices.map((choice) => (
          <ChoiceRow
            key={choice.value}
            name={choice.name}
            hint={choice.hint}
            pressed={choice.value === value}
            onPress={() => onValue(choice.value)}
          />
        ))}
      </div>
      {children}
    </Section>
  )
}
