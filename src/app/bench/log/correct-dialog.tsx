import { useState } from 'react'
import { useBench } from '@/app/bench/bench-context.ts'
import { loggedEnds } from '@/app/bench/entries/amount-checks.ts'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { TemperatureField } from '@/app/kit/field/temperature-field.tsx'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { Event } from '@/core/session/event-record.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import { eventText } from '@/core/wording/bench/event-text.ts'
import { clockTime } from '@/core/wording/words/clock-time.ts'
import { correctable, corrected } from './correction.ts'

/**
 * Mends one line of the log: its number, its words, or how many minutes earlier it really happened. The correction cites
 * the line; taking it back voids it. Both leave the old line in the log.
 */
export function CorrectDialog({ event, onClose }: { event: Event; onClose: () => void }) {
  const { log, plan, session } = useBench()
  const part = correctable(event)
  const degrees = useTemperatureText()
  const [value, setValue] = useState<number | null>(part.number?.value ?? null)
  const [text, setText] = useState(part.text ?? '')
  const [minutesEarlier, setMinutesEarlier] = useState<number | null>(0)

  const keep = async () => {
    await log(corrected(event, { value, text, minutesEarlier: minutesEarlier ?? 0 }))
    onClose()
  }
  const takeBack = async () => {
    const entry: BenchEntry = { kind: 'void', about: event.about, corrects: event.id }
    await log(entry)
    onClose()
  }
  const complete = part.number === undefined || value !== null
  return (
    <Dialog
      title={`${eventText(event, plan, degrees)}, ${clockTime(event.at, session.zone)}`}
      open
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" onPress={keep} disabled={!complete}>
            Keep the correction
          </Button>
          <Button onPress={takeBack}>Take this entry back</Button>
          <Button kind="quiet" onPress={onClose}>
            Leave it
          </Button>
        </>
      }
    >
      {part.number && event.kind === 'temperature' ? (
        <TemperatureField
          {...loggedEnds(event.of)}
          label={part.number.label}
          value={value}
          onValue={setValue}
          size="bench"
          required
        />
      ) : part.number ? (
        <NumberField
          label={part.number.label}
          unit={part.number.unit}
          value={value}
          onValue={setValue}
          check={part.number.check}
          size="bench"
          required
        />
      ) : null}
      {part.text !== undefined ? (
        <TextField label="Words" value={text} onValue={setText} maxLength={500} />
      ) : null}
      <NumberField
        label="It happened earlier by"
        unit="min"
        value={minutesEarlier}
        onValue={setMinutesEarlier}
        check={(minutes) =>
          minutes < 0 || minutes > 2880 ? 'Give 0 to 2880 minutes before the entry.' : undefined
        }
      />
    </Dialog>
  )
}
