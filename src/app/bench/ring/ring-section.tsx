import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { lineText } from '@/app/bench/line-name.ts'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { saveFile } from '@/app/kit/press/save-file.ts'
import { useServices } from '@/app/services/services.ts'
import { alarmText, ringText } from '@/core/wording/bench/alarm-text.ts'
import type { Ringing } from './use-ringing.ts'

/**
 * What rings on this device and what cannot, said as it is; a press that tries it; notes of the system and a voice at the oven where
 * they are wanted; the alarms as a calendar file for a phone that is locked.
 */
export function RingSection({ ringing }: { ringing: Ringing }) {
  const { sound, notes, awake, speaks, alarms, test, askNotes, turnSpeech } = ringing
  const { session, plan, whole } = useBench()
  const { now } = useServices()
  const calendar = async () => {
    const { alarmCalendar } = await import('@/core/wording/bench/alarm-calendar.ts')
    const text = alarmCalendar({
      trialId: whole.trial.id,
      session: session.number,
      writtenAt: now(),
      alarms: alarms
        .filter(({ at }) => at > now())
        .map(({ key, at, item }) => ({
          key,
          at,
          text: alarmText(item, plan, lineText(session, plan, item.unit)),
        })),
    })
    saveFile(`bench-session-${session.number}.ics`, text, 'text/calendar')
  }
  return (
    <Section title="What rings">
      <ul className={styles.rings}>
        {ringText({ sound, notes, awake }).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <div className={styles.pair}>
        <Button size="bench" onPress={test}>
          Try the ring
        </Button>
        {notes === 'default' ? (
          <Button size="bench" onPress={askNotes}>
            Allow notes
          </Button>
        ) : null}
        {speaks === null ? null : (
          <Button size="bench" pressed={speaks} onPress={turnSpeech}>
            A voice at the oven
          </Button>
        )}
        {alarms.some(({ at }) => at > now()) ? (
          <Button size="bench" onPress={calendar}>
            Alarms as a calendar file
          </Button>
        ) : null}
      </div>
    </Section>
  )
}
