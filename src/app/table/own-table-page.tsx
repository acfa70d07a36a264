import { useLiveQuery } from 'dexie-react-hooks'
import { useState } from 'react'
import { useNarrow } from '@/app/kit/look/use-narrow.ts'
import { Notice } from '@/app/kit/page/notice.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { guardPresses } from '@/app/kit/press/guard-presses.ts'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useShownOfClock } from '@/app/kit/time/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { doublePresses } from '@/core/session/double-presses.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import {
  hubSees,
  lineWords,
  notTakenText,
  ovenSeesLevels,
  partWords,
} from '@/core/wording/table/table-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import type { OwnTable } from '@/exchange/table-store.ts'
import { partNames } from '@/table/subjects.ts'
import { CloseTable } from './close-table.tsx'
import { CodePanel } from './code-panel.tsx'
import { useLines } from './lines.ts'
import { Ways } from './open-form.tsx'
import { PlanHand } from './plan-hand.tsx'
import { PressedTwice } from './pressed-twice.tsx'
import { SeatRow } from './seat-row.tsx'
import { seatOf, type TableSeat } from './seats-of-table.ts'
import styles from './table.module.css'
import { tableServices } from './table-services.ts'

/** Whether guests at a page can open what is sealed: it came by https, or from this very machine. */
const seals = (page: string) => {
  const { protocol, hostname } = new URL(page)
  return protocol === 'https:' || ['localhost', '127.0.0.1', '[::1]'].includes(hostname)
}

/** A table that is open: who holds which part, when they were last heard, what is still to come, and a code for each. */
export function OwnTablePage({ own }: { own: OwnTable }) {
  const services = useServices()
  const { store } = tableServices(services)
  const whole = useWholeTrial()
  const plan = planInForce(whole)
  const { trialId } = own
  const line = useLines(({ lines }) => lines[trialId])
  const heard = useLiveQuery(() => store.heard.where({ trialId }).toArray(), [store, trialId])
  const counts = useLiveQuery(() => store.counts.get(trialId), [store, trialId])
  // What is said of minutes changes with them.
  const tenth = useShownOfClock(services.now, (now) => Math.floor(now / 10_000))
  const [shown, setShown] = useState<string | null>(null)
  const narrow = useNarrow()
  const session = whole.sessions.toSorted((a, b) => a.number - b.number).at(-1)
  const tasters = session ? tastingState(whole, session.id).tasters : []
  const sealed = seals(own.ticket.page)
  const asSeat = (part: TableSeat['part'], tasterId: string | null) =>
    seatOf({ part, tasterId }, own.invited, heard ?? [], tenth * 10_000 + 9999)
  const helpers = partNames
    .filter((part) => part !== 'taster')
    .map((part) => {
      const sees =
        part === 'oven' && plan.factor.splitsAt !== 'mix' ? ovenSeesLevels : partWords[part].sees
      return { key: part as string, name: partWords[part].name, sees, seat: asSeat(part, null) }
    })
  const guests = tasters.map(({ tasterId, answered, expected }) => ({
    key: tasterId,
    name: tasterName(tasterId, whole.kitchen),
    sees: `${answered} of ${expected} ballots`,
    seat: asSeat('taster', tasterId),
  }))
  const rows = [...(sealed ? helpers : []), ...guests]
  const here = rows.filter(({ seat }) => seat.presence.state === 'here').length
  const chosen = rows.find(({ key }) => key === shown)
  const code = chosen ? (
    <CodePanel key={chosen.key} own={own} name={chosen.name} seat={chosen.seat} sealed={sealed} />
  ) : null
  const doubles = doublePresses(whole.events)
  const notTaken = rows.flatMap(({ name, seat }) =>
    seat.notTaken.map(({ count, reason }) => ({ key: `${name} ${count}`, name, reason })),
  )
  return (
    <div ref={guardPresses} className={styles.page}>
      <PageHeading>Open table</PageHeading>
      <p className={styles.lead}>
        {here === 0
          ? 'No other device is here.'
          : here === 1
            ? 'One other device is here.'
            : `${here} other devices are here.`}{' '}
        <span className={styles.soft}>
          Each sees what its part may see, and keeps working when it loses the others.
        </span>
      </p>
      <p role="status">{lineWords(line)}</p>
      {sealed ? null : (
        <Notice kind="caution" title="Nothing is sealed at this table">
          <p>
            The hub’s page is served by plain http, where browsers offer no sealing, no camera and
            nothing without the network. Tasters can come by it, if you and they accept that: say so
            before they scan. Helpers need https, so that levels and codes never go over the network
            in clear.
          </p>
        </Notice>
      )}
      <div className={styles.columns}>
        <ul className={styles.rows}>
          {rows.map(({ key, name, sees, seat }) => (
            <SeatRow
              key={key}
              name={name}
              sees={sees}
              seat={seat}
              shown={key === shown}
              onShow={() => setShown(key === shown ? null : key)}
              code={narrow && key === shown ? code : null}
            />
          ))}
        </ul>
        {narrow
          ? null
          : (code ?? (
              <p className={styles.soft}>
                Press <i>Show code</i>, and let the other device scan it.
                {session ? '' : ' Tasters get theirs once the session is begun.'}
              </p>
            ))}
      </div>
      {sealed ? (
        <PlanHand own={own} helpers={helpers.map(({ seat }) => seat)} heard={heard ?? []} />
      ) : null}
      {doubles.length > 0 ? <PressedTwice doubles={doubles} whole={whole} /> : null}
      {notTaken.length > 0 ? (
        <Section title="Not taken in">
          <ul className={styles.rows}>
            {notTaken.map(({ key, name, reason }) => (
              <li key={key} className={styles.said}>
                {name}: {notTakenText(reason)}.
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      <Section title="The hub">
        <p className={styles.soft}>{sealed ? hubSees : null}</p>
        {counts && counts.foreign > 0 ? (
          <p>
            {counts.foreign === 1 ? 'One message' : `${counts.foreign} messages`} did not open and
            changed nothing: altered, of a code that was taken back, or not of this table.
          </p>
        ) : null}
        <Ways />
        <div className={styles.actions}>
          <LinkButton href={`#/trial/${trialId}/tasting`}>To the tasting</LinkButton>
          <CloseTable own={own} toCome={rows.reduce((sum, { seat }) => sum + seat.toCome, 0)} />
        </div>
      </Section>
    </div>
  )
}
