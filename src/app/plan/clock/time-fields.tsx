import { useId, useState } from 'react'
import { civilFromText } from '@/core/wording/plan/civil-text.ts'
import { civilMoment } from '@/core/wording/words/civil-moment.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'
import styles from './clock-page.module.css'

const two = (value: number) => String(value).padStart(2, '0')

interface HourFieldProps {
  label: string
  minutes: number
  onMinutes: (minutes: number) => void
}

/** A time of day. */
export function HourField({ label, minutes, onMinutes }: HourFieldProps) {
  return (
    <TimeInput
      type="time"
      label={label}
      shown={`${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`}
      mend="write hour and minute."
      read={(text) => {
        const [hour, minute] = text.split(':').map(Number)
        return hour === undefined || minute === undefined ? null : hour * 60 + minute
      }}
      onRead={onMinutes}
    />
  )
}

interface MomentFieldProps {
  label: string
  at: number
  zone: string
  onAt: (at: number) => void
}

/** A day and a time in the plan's zone. */
export function MomentField({ label, at, zone, onAt }: MomentFieldProps) {
  const { year, month, day, hour, minute } = civilTime(at, zone)
  return (
    <TimeInput
      type="datetime-local"
      label={label}
      shown={`${year}-${two(month)}-${two(day)}T${two(hour)}:${two(minute)}`}
      mend="write day, hour and minute."
      read={(text) => {
        const civil = civilFromText(text)
        return civil && civilMoment(civil, zone)
      }}
      onRead={onAt}
    />
  )
}

interface TimeInputProps {
  type: 'time' | 'datetime-local'
  label: string
  shown: string
  /** What to do about a text that is no time yet. */
  mend: string
  read: (text: string) => number | null
  onRead: (value: number) => void
}

/** What is typed by half stays as it is and changes nothing yet. */
function TimeInput({ type, label, shown, mend, read, onRead }: TimeInputProps) {
  const id = useId()
  const [half, setHalf] = useState<string | null>(null)
  return (
    <div className={styles.moment}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type={type}
        value={half ?? shown}
        aria-invalid={half !== null ? true : undefined}
        aria-describedby={half !== null ? `${id}-trouble` : undefined}
        onChange={({ target }) => {
          const value = read(target.value)
          if (value === null) return setHalf(target.value)
          setHalf(null)
          onRead(value)
        }}
      />
      {half === null ? null : (
        <p id={`${id}-trouble`} className={styles.off}>
          {label}: {mend}
        </p>
      )}
    </div>
  )
}
