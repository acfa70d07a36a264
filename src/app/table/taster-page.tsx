import { useEffect } from 'react'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { useSeated } from '@/app/kit/page/seated.ts'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import { guardPresses } from '@/app/kit/press/guard-presses.ts'
import { OwnBallot } from '@/app/own/own-ballot.tsx'
import { type OwnTexts, ownReturn } from '@/app/own/own-state.ts'
import { useServices } from '@/app/services/services.ts'
import { lineWords } from '@/core/wording/table/table-text.ts'
import { putOut } from '@/exchange/joined-table.ts'
import type { JoinedTable } from '@/exchange/table-store.ts'
import { type BallotSlip, readSlip } from '@/slip/ballot-slip.ts'
import { bytesOfLinkText, linkTextOf } from '@/slip/link-text.ts'
import { bytesOfReturn } from '@/slip/return-slip.ts'
import { Leave, useWaiting, waitsText } from './leave-table.tsx'
import { useLines } from './lines.ts'
import styles from './table.module.css'
import { tableServices } from './table-services.ts'

/** A taster's ballot at an open table: it goes to the baker by itself, act by act. */
export function TasterPage({ joined }: { joined: JoinedTable }) {
  const bytes = joined.notice?.slip ? bytesOfLinkText(joined.notice.slip) : null
  const read = bytes ? readSlip(bytes) : null
  return read?.ok ? <Ballot joined={joined} slip={read.slip} /> : <NoBallotYet joined={joined} />
}

function NoBallotYet({ joined }: { joined: JoinedTable }) {
  const line = useLines(({ lines }) => lines[`${joined.table}/${joined.seat}`])
  const waits = useWaiting(joined)
  return (
    <div ref={guardPresses} className={styles.page}>
      <PageHeading>At the table</PageHeading>
      <p className={styles.lead}>
        {joined.notice ? 'There is nothing to taste now.' : 'Your ballot is on its way.'}{' '}
        <span className={styles.soft}>It stands here as soon as the baker has it ready.</span>
      </p>
      <p role="status">{lineWords(line)}</p>
      <Leave joined={joined} waits={waits} />
    </div>
  )
}

function Ballot({ joined, slip }: { joined: JoinedTable; slip: BallotSlip }) {
  const services = useServices()
  const { notebook } = services
  const { store } = tableServices(services)
  const watch = useThrown()
  const { seat } = useSeated()
  const { table } = joined
  // By the tasting, not by the issue of the slip: a ballot given out anew goes on where it was.
  const keptUnder = `own/table-${table}-${slip.tag}`
  useEffect(() => {
    seat(true)
    return () => seat(false)
  }, [seat])
  const handOver = async (texts: OwnTexts) => {
    if (texts.declined === 'yes')
      return await putOut(store, table, [{ entry: { kind: 'declines' }, eventId: null }])
    const stands = `${slip.issue}/${texts.acts ?? '0'}`
    if (Number(texts.acts ?? 0) === 0 || texts.handed === stands) return
    const text = linkTextOf(bytesOfReturn(ownReturn(slip, texts), slip.key))
    await putOut(store, table, [{ entry: { kind: 'ballots', text }, eventId: null }])
    await notebook.keepDraft(keptUnder, { ...(await notebook.draft(keptUnder)), handed: stands })
  }
  // What was sealed here and not handed over, as after a reload or under a newer slip, goes now.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for each slip
  useEffect(() => {
    watch(notebook.draft(keptUnder).then((texts) => (texts ? handOver(texts) : undefined)))
  }, [keptUnder, slip.issue])
  return (
    <OwnBallot
      slip={slip}
      keptUnder={keptUnder}
      onKept={handOver}
      end={<AtTheEnd joined={joined} />}
    />
  )
}

function AtTheEnd({ joined }: { joined: JoinedTable }) {
  const line = useLines(({ lines }) => lines[`${joined.table}/${joined.seat}`])
  const waits = useWaiting(joined)
  return (
    <div className={styles.page}>
      <p className={styles.lead}>
        {waits === 0 ? 'The baker has all your ballots.' : 'Your ballots are kept here.'}
      </p>
      <p role="status">
        {waits === 0 ? '' : `${waitsText(waits)} Keep this page open. `}
        {lineWords(line)}
      </p>
      <Leave joined={joined} waits={waits} />
    </div>
  )
}
