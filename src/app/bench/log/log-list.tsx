import { useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { PhotoThumb } from '@/app/bench/entries/photo-thumb.tsx'
import { LineMark } from '@/app/bench/line-mark.tsx'
import { whichBefore } from '@/app/bench/line-name.ts'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { About, Event } from '@/core/session/event-record.ts'
import { lasts, unsealedSessions } from '@/core/session/lasting.ts'
import { blindBaker } from '@/core/tasting/baker-blind.ts'
import { eventText } from '@/core/wording/bench/event-text.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { CorrectDialog } from './correct-dialog.tsx'

const shownAtFirst = 8

/** What may name or show a level while the codes are kept. */
const telling: ReadonlySet<Event['kind']> = new Set<Event['kind']>([
  ...(['weighed', 'worked-in', 'note', 'photo', 'measured'] as const),
])

/** What was logged, newest first. Pressing a line opens its correction, and the old line stays in the log behind the new one; what lasts has none. */
export function LogList() {
  const { events: whole, session, covered } = useBench()
  // Weights would tell the levels, and words or photos may.
  const events = covered ? whole.filter(({ kind }) => !telling.has(kind)) : whole
  const [all, setAll] = useState(false)
  const [correcting, setCorrecting] = useState<Event | null>(null)
  const newestFirst = events.toReversed()
  const unsealed = unsealedSessions(events)
  const shown = all ? newestFirst : newestFirst.slice(0, shownAtFirst)
  if (events.length === 0) return null
  return (
    <Section title="Log" aside={`${events.length} ${events.length === 1 ? 'entry' : 'entries'}`}>
      <ol className={styles.lines}>
        {shown.map((event) => (
          <li key={event.id}>
            {lasts(event, unsealed) ? (
              <p className={styles.line}>
                <LogLine event={event} zone={session.zone} />
              </p>
            ) : (
              <button type="button" className={styles.line} onClick={() => setCorrecting(event)}>
                <LogLine event={event} zone={session.zone} />
              </button>
            )}
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
  const { plan, session } = useBench()
  const degrees = useTemperatureText()
  const { now } = useServices()
  return (
    <>
      <span>{dayTime(event.at, now(), zone)}</span>
      <span className={styles.lineMark}>
        <LogMark about={event.about} />
      </span>
      <span>
        {whichBefore(session, plan, event.about)}
        {eventText(event, plan, degrees)}
        {event.kind === 'photo' ? (
          <PhotoThumb photoId={event.photoId} caption={event.caption ?? ''} />
        ) : null}
      </span>
    </>
  )
}

/** What a line is about: a dough or piece by its tab, a taster by initials, a serving by its code. */
function LogMark({ about: { kind, id } }: { about: About }) {
  const { whole, session, plan, events } = useBench()
  switch (kind) {
    case 'batch':
    case 'piece':
      return <LineMark unit={{ kind, id }} size="small" />
    case 'taster':
      return <b>{tasterName(id, whole.kitchen)}</b>
    case 'serving':
      // Its code alone: which dough it is of stands nowhere beside it.
      if (blindBaker(plan, events) !== null) return <b>a piece</b>
      return <b>{session.dealt.servings.find((each) => each.id === id)?.code}</b>
    default:
      return null
  }
}
