import type { ReactNode } from 'react'
import { ForwardMark } from '@/app/kit/look/forward-mark.tsx'
import { Section } from '@/app/kit/page/section.tsx'
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
          <button
            key={choice.value}
            type="button"
            className={styles.choice}
            aria-pressed={choice.value === value}
            onClick={() => onValue(choice.value)}
          >
            <span>
              <b>{choice.name}</b> <span className={styles.soft}>{choice.hint}</span>
            </span>
            <ForwardMark />
          </button>
        ))}
      </div>
      {children}
    </Section>
  )
}
