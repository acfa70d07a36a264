import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { guardPresses } from '@/app/kit/press/guard-presses.ts'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { lineWords, notTakenText, partWords } from '@/core/wording/table/table-text.ts'
import type { JoinedTable } from '@/exchange/table-store.ts'
import { Leave, useWaiting, waitsText } from './leave-table.tsx'
import { useLines } from './lines.ts'
import styles from './table.module.css'

/** What a helper's device sees of a table: the way to the work, what waits to go, and for who watches how far things are. */
export function HelperPage({ joined }: { joined: JoinedTable }) {
  const { part, trialId, notice, seat, table } = joined
  const line = useLines(({ lines }) => lines[`${table}/${seat}`])
  const waits = useWaiting(joined)
  const refused = notice?.refused.filter((each) => each.seat === seat) ?? []
  const { watched } = notice ?? { watched: null }
  return (
    <div ref={guardPresses} className={styles.page}>
      <PageHeading>{`${partWords[part].name} at the table`}</PageHeading>
      <p className={styles.lead}>
        This device sees {partWords[part].sees}.{' '}
        <span className={styles.soft}>
          {part === 'watch'
            ? 'It writes nothing.'
            : 'It goes on when it loses the others; what is written goes out later, in its order.'}
        </span>
      </p>
      {notice?.planAt === seat ? (
        <p>
          The plan was handed to this device: it is changed here alone, and the others see each
          change.
        </p>
      ) : null}
      <p role="status">
        {lineWords(line)} {part === 'watch' ? '' : waitsText(waits)}
      </p>
      {part === 'watch' ? (
        watched ? (
          <Section title={watched.title}>
            <p className={styles.count}>
              {watched.ballots.in} of {watched.ballots.expected}
            </p>
            <p>ballots are in.</p>
          </Section>
        ) : (
          <p>Nothing was told of the table yet.</p>
        )
      ) : trialId ? (
        <div className={styles.actions}>
          <LinkButton kind="primary" href={`#/trial/${trialId}/bench`}>
            To the bench
          </LinkButton>
          {notice?.planAt === seat ? (
            <LinkButton href={`#/trial/${trialId}/plan`}>To the plan</LinkButton>
          ) : null}
        </div>
      ) : (
        <p>
          The trial comes as soon as the baker’s device is heard. It is enough that its page is open
          once.
        </p>
      )}
      {refused.length > 0 ? (
        <Section title="Not taken in">
          <ul className={styles.rows}>
            {refused.map(({ count, reason }) => (
              <li key={count} className={styles.said}>
                Entry {count} of this device: {notTakenText(reason)}. It stays here.
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      <Leave joined={joined} waits={waits} />
    </div>
  )
}
