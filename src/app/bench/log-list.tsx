import { useState } from 'react'
import { Button } from '@/app/kit/button.tsx'
import { Section } from '@/app/kit/section.tsx'
import { useTemperatureText } from '@/app/kit/temperature-unit.ts'
import type { Event } from '@/core/session/event-record.ts'
import { clockTime } from '@/core/wording/clock-time.ts'
import { eventText } from '@/core/wording/event-text.ts'
import styles from './bench.module.css'
import { useBench } from './bench-context.ts'
import { CorrectDialog } from './correct-dialog.tsx'
import { LineMark } from './line-mark.tsx'
import { PhotoThumb } from './photo-thumb.tsx'

const shownAtFirst = 8

/** What was logged, newest first. Pressing a line opens its correction; the old line stays in the log behind the new one. */
export function LogList() {
  const { events, session } = useBench()
  const [all, setAll] = useState(false)
  const [correcting, setCorrecting] = useState<Event | null>(null)
  const newestFirst = events.toReversed()
  const shown = all ? newestFirst : newestFirst.slice(0, shownAtFirst)
  if (events.length === 0) return null
  return (
    <Section title="Log" aside={`${events.length} ${events.length === 1 ? 'entry' : 'entries'}`}>
      <ol className={styles.lines}>
        {shown.map((event) => (
          <li key={event.id}>
            <button type="button" className={styles.line} onClick={() => setCorrecting(event)}>
              <LogLine event={event} zone={session.zone} />
            </button>
          </li>
        ))}
      </ol>
      {newestFirst.length > shownAtFirst ? (
        <Button kind="quiet" onPress={() => setAll(!all)}>
          {all ? 'Only the latest' : `All ${newestFirst.length} entries`}
        </Button>
      ) : null}
      {correcting ? <CorrectDialog event={correcting} onClose={() => setCorrecting(null)} /> : null}
    </Section>
  )
}

function LogLine({ event, zone }: { event: Event; zone: string }) {
  const { plan } = useBench()
  const degrees = useTemperatureText()
  return (
    <>
      <span className={styles.lineTime}>{clockTime(event.at, zone)}</span>
      <span className={styles.lineMark}>
        {event.about.kind === 'batch' || event.about.kind === 'piece' ? (
          <LineMark unit={{ kind: event.about.kind, id: event.about.id }} size="small" />
        ) : null}
      </span>
      <span>
        {eventText(event, plan, degrees)}
        {event.kind === 'photo' ? (
          <PhotoThumb photoId={event.photoId} caption={event.caption ?? ''} />
        ) : null}
      </span>
    </>
  )
}
