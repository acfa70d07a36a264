import type { FieldWords } from '@/app/kit/field/field.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { type TimeOfDay, typedTimeOfDay } from '@/core/session/press/time-of-day.ts'
import { noTimeOfDayText } from '@/core/wording/words/time-of-day-text.ts'

interface TimeOfDayFieldProps extends FieldWords {
  /** What stands in the field, finished or not. */
  text: string
  onText: (text: string) => void
  /** The field is left, and what stands in it is a time of day: the place writes it back in the person's own form. */
  onLeave: (time: TimeOfDay) => void
}

/**
 * A time of day, typed by 24 hours or with am and pm whatever the browser's language is. What cannot be read stays as it was
 * typed, and the message under it names the field once that is left.
 */
export function TimeOfDayField({ text, onText, onLeave, ...words }: TimeOfDayFieldProps) {
  return (
    <TextField
      {...words}
      value={text}
      maxLength={12}
      check={(typed) => (typedTimeOfDay(typed) ? undefined : noTimeOfDayText(words.label))}
      onValue={onText}
      onLeave={() => {
        const time = typedTimeOfDay(text)
        if (time) onLeave(time)
      }}
    />
  )
}
