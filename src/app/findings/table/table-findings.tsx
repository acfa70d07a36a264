import styles from '@/app/findings/findings.module.css'
import { Button } from '@/app/kit/press/button.tsx'
import type { TableChoices } from './table-choices.ts'

const said: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  foot: {
    'leave-out': 'Rows at the foot that sum up the others are left out.',
    keep: 'Rows at the foot are read like the others.',
  },
  alike: {
    one: 'Names that differ in capitals or spaces alone are read as one.',
    two: 'Names that differ in capitals or spaces alone are kept apart.',
  },
  repeats: { replicates: 'Every row that repeats is read as a dough or loaf of its own.' },
}

interface TableFindingsProps {
  choices: TableChoices
  /** Takes an answer back, so that the question is asked again. */
  onUndo: (key: string) => void
}

/** What was answered about how the table is to be read, each to be taken back. */
export function TableFindings({ choices, onUndo }: TableFindingsProps) {
  return Object.entries(said).flatMap(([key, texts]) => {
    const text = texts[choices[key] ?? '']
    return text === undefined
      ? []
      : [
          <div key={key} className={styles.tools}>
            <p>{text}</p>
            <Button kind="quiet" onPress={() => onUndo(key)}>
              Ask again
            </Button>
          </div>,
        ]
  })
}
