import { useLiveQuery } from 'dexie-react-hooks'
import { useEffect } from 'react'
import { useHashLocation } from 'wouter/use-hash-location'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { guardPresses } from '@/app/kit/press/guard-presses.ts'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { markOpenTable, useOpenTables } from '@/app/services/open-tables.ts'
import { useServices } from '@/app/services/services.ts'
import { partWords } from '@/core/wording/table/table-text.ts'
import { keepJoinedTable } from '@/exchange/open-table.ts'
import { type Invitation, readInvitation } from '@/table/invitation.ts'
import { canSeal } from '@/table/part-keys.ts'
import { HelperPage } from './helper-page.tsx'
import styles from './table.module.css'
import { tableServices } from './table-services.ts'
import { TasterPage } from './taster-page.tsx'

/**
 * Comes to a table by its code. The address brings the invitation; it is kept at once and goes from the address, so that neither
 * the history nor a second look at the link shows it, and a reload goes on where it was.
 */
export function JoinPlace({ text }: { text?: string | undefined }) {
  const services = useServices()
  const { notebook } = services
  const [, navigate] = useHashLocation()
  const tables = useOpenTables()
  const watch = useThrown()
  const read = text === undefined ? null : readInvitation(text)
  const join = async ({ table, part }: Invitation) => {
    const page = `${location.origin}${location.pathname}`
    await keepJoinedTable(tableServices(services), page, text ?? '', { table, part })
    await markOpenTable(notebook, `joined/${table}`, part)
    navigate('/join', { replace: true })
  }
  const invitation = read?.ok ? read.invitation : null
  const wantsAsking = invitation !== null && (invitation.secret === null || !canSeal())
  // biome-ignore lint/correctness/useExhaustiveDependencies: the address alone makes it come to a table
  useEffect(() => {
    if (invitation && !wantsAsking) watch(join(invitation))
  }, [text])
  if (read && !read.ok)
    return (
      <Trouble>
        {read.reason === 'damaged'
          ? 'The link is not whole: something cut it on its way. Scan the code again, or ask for the link once more.'
          : 'This code comes from a newer version of the app. Load this page again, then scan it once more.'}
      </Trouble>
    )
  if (invitation?.secret && !canSeal())
    return (
      <Trouble>
        This page came by plain http, where browsers offer no sealing, and this code is sealed. Ask
        the baker for the address that begins with https.
      </Trouble>
    )
  if (invitation && wantsAsking)
    return <InClear invitation={invitation} onJoin={() => join(invitation)} />
  if (text !== undefined || !tables) return <Progress label="Coming to the table" done={null} />
  return <Joined />
}

function Joined() {
  const { store } = tableServices(useServices())
  const found = useLiveQuery(() => store.joined.orderBy('table').toArray(), [store])
  if (!found) return <Progress label="Coming to the table" done={null} />
  const newest = found.toSorted((a, b) => b.joinedAt - a.joinedAt)[0]
  if (!newest)
    return (
      <Trouble>This device has no part at a table. Scan the code that the baker shows.</Trouble>
    )
  return newest.part === 'taster' ? (
    <TasterPage key={newest.seat} joined={newest} />
  ) : (
    <HelperPage key={newest.seat} joined={newest} />
  )
}

function InClear({ invitation, onJoin }: { invitation: Invitation; onJoin: () => Promise<void> }) {
  return (
    <div ref={guardPresses} className={styles.page}>
      <PageHeading>Coming to the table</PageHeading>
      <Notice kind="caution" title="Nothing is sealed on this way">
        <p>
          This page came by plain http. You are sent{' '}
          {invitation.part === 'taster'
            ? 'your own ballot alone'
            : `your own part alone (${partWords[invitation.part].sees})`}
          , but whoever listens in this network can read and change it. The page has no camera, and
          nothing works without the network.
        </p>
      </Notice>
      <div className={styles.actions}>
        <Button kind="primary" onPress={onJoin}>
          Come to the table all the same
        </Button>
        <LinkButton href="#/">Stay away</LinkButton>
      </div>
    </div>
  )
}

function Trouble({ children }: { children: React.ReactNode }) {
  return (
    <>
      <PageHeading>A table</PageHeading>
      <EmptyState title="No part here" action={<LinkButton href="#/">To the notebook</LinkButton>}>
        {children}
      </EmptyState>
    </>
  )
}
