import { useState } from 'react'
import { useBench } from '@/app/bench/bench-context.ts'
import { amountCheck, endsCheck } from '@/app/bench/entries/amount-checks.ts'
import { OddReading } from '@/app/bench/entries/odd-reading.tsx'
import { NotLogged } from '@/app/bench/not-logged.tsx'
import { MassField } from '@/app/kit/field/mass-field.tsx'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { TemperatureField } from '@/app/kit/field/temperature-field.tsx'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { TimeOfDayField } from '@/app/kit/time/time-of-day-field.tsx'
import { useServices } from '@/app/services/services.ts'
import type { Event } from '@/core/session/event-record.ts'
import { correctable, corrected } from '@/core/session/press/correction.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import { eventText } from '@/core/wording/bench/event-text.ts'
import { clockTime, hourText } from '@/core/wording/words/civil-time.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import { correctedTimeLabel, typedMoment } from './typed-moment.ts'
import { useOddCorrection } from './use-odd-correction.ts'

/**
 * Mends one line of the log: its number, its words, or the time of day at which it really happened. The correction cites the
 * line; taking it back voids it. Both leave the old line in the log.
 */
export function CorrectDialog({ event, onClose }: { event: Event; onClose: () => void }) {
  const { log, plan, session, events } = useBench()
  const { now } = useServices()
  const part = correctable(event)
  const degrees = useTemperatureText()
  const [value, setValue] = useState<number | null>(part.number?.value ?? null)
  const [text, setText] = useState(part.text ?? '')
  const [time, setTime] = useState(clockTime(event.at, session.zone))
  const [asked, setAsked] = useState<number | null>(null)
  const moment = typedMoment(event, time, { log: events, now: now(), session })

  const odd = useOddCorrection(event)
  const changed = value !== null && value !== part.number?.value
  const words = changed ? odd(value) : null
  const asking = words !== null && asked === value
  const keep = async () => {
    if (!moment.ok) return
    if (words !== null && !asking) {
      setAsked(value)
      return
    }
    if (await log(corrected(event, { value, text, at: moment.at }))) onClose()
  }
  const takeBack = async () => {
    const entry: BenchEntry = { kind: 'void', about: event.about, corrects: event.id }
    if (await log(entry)) onClose()
  }
  const complete = (part.number === undefined || part.number.mayLack || value !== null) && moment.ok
  return (
    <Dialog
      title={`${eventText(event, plan, degrees)}, ${dayTime(event.at, now(), session.zone)}`}
      open
      onClose={onClose}
      actions={
        <>
          <Button kind={asking ? 'plain' : 'primary'} onPress={keep} disabled={!complete}>
            {asking ? 'Keep the correction as it is' : 'Keep the correction'}
          </Button>
          <Button onPress={takeBack}>Take this entry back</Button>
          <Button kind="quiet" onPress={onClose}>
            Leave it
          </Button>
        </>
      }
    >
      <NotLogged />
      {part.number && event.kind === 'temperature' ? (
        <TemperatureField
          leastCelsius={part.number.ends?.least ?? -273}
          mostCelsius={part.number.ends?.most ?? 1000}
          label={part.number.label}
          value={value}
          onValue={setValue}
          size="bench"
          required
        />
      ) : part.number?.unit === 'g' ? (
        <MassField
          label={part.number.label}
          value={value}
          onValue={setValue}
          check={amountCheck.grams}
          size="bench"
          required
        />
      ) : part.number ? (
        <NumberField
          label={part.number.label}
          unit={part.number.unit}
          value={value}
          onValue={setValue}
          {...(part.number.ends ? { check: endsCheck(part.number.ends, part.number.unit) } : {})}
          size="bench"
          required={part.number.mayLack !== true}
        />
      ) : null}
      {asking ? <OddReading words={words} /> : null}
      {part.text !== undefined ? (
        <TextField label="Words" value={text} onValue={setText} maxLength={500} />
      ) : null}
      <TimeOfDayField
        label={correctedTimeLabel}
        text={time}
        onText={setTime}
        onLeave={(typed) => setTime(hourText(typed))}
        hint={moment.ok ? dayTime(moment.at, now(), session.zone) : undefined}
        problem={moment.ok ? undefined : moment.problem}
      />
    </Dialog>
  )
}
