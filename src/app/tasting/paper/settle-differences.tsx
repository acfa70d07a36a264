import { useState } from 'react'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'
import type { Difference } from './sheet-differences.ts'

interface SettleDifferencesProps {
  differences: readonly Difference[]
  onSettle: (difference: Difference, text: string) => void
}

/** What two hands read differently, without what either read: the sheet says which it is. */
export function SettleDifferences({ differences, onSettle }: SettleDifferencesProps) {
  const some = differences.every(({ digit }) => digit) ? 'cell' : 'answer'
  return (
    <div className={styles.stack}>
      <p className={styles.lead}>
        {differences.length === 1
          ? `One ${some} differs.`
          : `${differences.length} ${some}s differ.`}{' '}
        Look at the sheet, and type what it says.
      </p>
      {differences.map((difference) => (
        <SettleOne
          key={difference.fields.first}
          difference={difference}
          onSettle={(text) => onSettle(difference, text)}
        />
      ))}
    </div>
  )
}

function SettleOne({
  difference,
  onSettle,
}: {
  difference: Difference
  onSettle: (text: string) => void
}) {
  const { label, digit, maxLength, trouble } = difference
  const [text, setText] = useState('')
  const [tried, setTried] = useState(false)
  const wrong = text.trim() === '' ? 'Type what the sheet says.' : trouble(text)
  const take = () => {
    setTried(true)
    if (wrong === '') onSettle(text)
  }
  return (
    <>
      <TextField
        label={`${label}, as the sheet says`}
        value={text}
        maxLength={maxLength}
        onValue={(typed) => {
          setText(typed)
          setTried(digit && typed !== '')
          if (digit && typed !== '' && trouble(typed) === '') onSettle(typed)
        }}
        {...(tried && wrong !== '' ? { problem: wrong } : {})}
      />
      {digit ? null : (
        <div>
          <Button onPress={take}>So says the sheet</Button>
        </div>
      )}
    </>
  )
}
