import { Button } from '@/app/kit/press/button.tsx'
import styles from './key-pad.module.css'

const rows = [
  ['1', '2', '3', 'back'],
  ['4', '5', '6', '.'],
  ['7', '8', '9', '0'],
] as const

interface KeyPadProps {
  text: string
  onText: (text: string) => void
  /** A temperature may lie below zero: then a key changes the sign. */
  signed?: boolean
}

/** Keys of our own under a number: large enough for floury fingers, and nothing slides over the page. */
export function KeyPad({ text, onText, signed = false }: KeyPadProps) {
  const press = (key: (typeof rows)[number][number]) => {
    if (key === 'back') onText(text.slice(0, -1))
    else if (key !== '.') onText(text + key)
    else if (signed && text === '') onText('-')
    else if (!text.includes('.')) onText(`${text === '' ? '0' : text}.`)
  }
  return (
    <fieldset className={styles.pad}>
      <legend className={styles.unseen}>Keys</legend>
      {rows.flat().map((key) => (
        <Button
          key={key}
          size="bench"
          label={
            key === 'back'
              ? 'Take the last sign away'
              : key === '.' && signed && text === ''
                ? 'Minus'
                : key
          }
          onPress={() => press(key)}
        >
          {key === 'back' ? <BackMark /> : key === '.' && signed && text === '' ? '−' : key}
        </Button>
      ))}
    </fieldset>
  )
}

const BackMark = () => (
  <svg aria-hidden="true" width="30" height="22" viewBox="0 0 30 22" fill="none">
    <path d="M9 1h20v20H9L1 11z" stroke="currentColor" strokeWidth="2" strokeLinejoin="round" />
    <path d="M14 6l9 10M23 6l-9 10" stroke="currentColor" strokeWidth="2" />
  </svg>
)
