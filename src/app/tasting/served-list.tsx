import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'
import { servingTurns } from './serving-turns.ts'
import { useTable } from './tasting-context.ts'
import { useTableLog } from './use-table-log.ts'

/**
 * Served as baked: one press as a code is put before the tasters, in the order of the flights, so that the log knows when
 * it came to the table. A code says nothing of its level.
 */
export function ServedList() {
  const { whole, session, state } = useTable()
  const log = useTableLog()
  if (planOfSession(whole, session).serving !== 'as-baked') return null
  const servedAt = new Map(
    eventsOfSession(whole.events, session.id)
      .filter((event) => event.kind === 'served')
      .map((event) => [event.about.id, event.at]),
  )
  const turns = servingTurns(session, state.notServed)
  const next = turns.find(({ id }) => !servedAt.has(id))
  return (
    <Section title="To the table" aside={`${servedAt.size} of ${turns.length} served`}>
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
        {turns.map(({ id, code, flight }) => {
          const at = servedAt.get(id)
          return (
            <li key={id} className={id === next?.id ? styles.turnNext : ''}>
              <b>{code}</b>
              <span className={styles.quiet}>
                {flight === null ? 'warm-up' : `flight ${flight}`}
                {at === undefined ? '' : `, ${clockTime(at, session.zone)}`}
              </span>
            </li>
          )
        })}
      </ol>
    </Section>
  )
}
