import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { servingDues } from '@/core/session/serving-dues.ts'
import { blindBaker } from '@/core/tasting/baker-blind.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { servingDueText } from '@/core/wording/bench/serving-due-text.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'
import { useTable } from './tasting-context.ts'
import { useTableLog } from './use-table-log.ts'

/**
 * Served as baked: one press as a code is put before the tasters, in the order of the flights, so that the log knows when
 * it came to the table. A code says nothing of its level.
 */
export function ServedList() {
  const { whole, session } = useTable()
  const log = useTableLog()
  const plan = planOfSession(whole, session)
  if (plan.serving !== 'as-baked') return null
  const events = eventsOfSession(whole.events, session.id)
  const turns = servingDues(session, plan, events)
  // Whoever drew the pieces from the oven knows them by the minute.
  const timed = blindBaker(plan, events) === null
  const next = turns.find(({ servedAt }) => servedAt === null)
  const served = turns.filter(({ servedAt }) => servedAt !== null).length
  const time = (at: number) => clockTime(at, session.zone)
  return (
    <Section title="To the table" aside={`${served} of ${turns.length} served`}>
      {next ? (
        <Button
          size="bench"
          onPress={() => log({ kind: 'served', about: { kind: 'serving', id: next.id } })}
        >
          {next.code} is served now{next.flight === null ? ', to warm up' : ''}
        </Button>
      ) : (
        <p>Every code has been served.</p>
      )}
      <ol className={styles.turns} aria-label="Codes in the order they are served">
        {turns.map((turn) => (
          <li key={turn.id} className={turn.id === next?.id ? styles.turnNext : ''}>
            <b>{turn.code}</b>
            <span className={styles.quiet}>
              {turn.flight === null ? 'warm-up' : `flight ${turn.flight}`}
              {timed ? `, ${servingDueText(turn, time)}` : turn.servedAt === null ? '' : ', served'}
            </span>
          </li>
        ))}
      </ol>
    </Section>
  )
}
