import { useLiveQuery } from 'dexie-react-hooks'
import { useEffect, useState } from 'react'
import { useHashLocation } from 'wouter/use-hash-location'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { useSeated } from '@/app/kit/page/seated.ts'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useServices } from '@/app/services/services.ts'
import { slipTroubleText } from '@/core/wording/tasting/slip-text.ts'
import { type BallotSlip, type ReadSlip, readSlip } from '@/slip/ballot-slip.ts'
import { bytesOfLinkText } from '@/slip/link-text.ts'
import { OwnBallot } from './own-ballot.tsx'

const currentKey = 'own/current'

const readText = (text: string): ReadSlip => {
  const bytes = bytesOfLinkText(text)
  return bytes ? readSlip(bytes) : { ok: false, reason: 'incomplete' }
}

/**
 * A ballot on a taster's own phone. The address brings it whole; it is kept at once and goes from the address, so that neither
 * the history nor a second look at the link shows anything, and a reload goes on where it was.
 */
export function OwnPlace({ text }: { text?: string | undefined }) {
  const { notebook } = useServices()
  const [, navigate] = useHashLocation()
  const { seat } = useSeated()
  const watch = useThrown()
  const [trouble, setTrouble] = useState<Exclude<ReadSlip, { ok: true }>['reason'] | null>(null)
  useEffect(() => {
    seat(true)
    return () => seat(false)
  }, [seat])
  useEffect(() => {
    if (text === undefined) return
    const take = async () => {
      const read = readText(text)
      if (!read.ok) return setTrouble(read.reason)
      await notebook.keepDraft(currentKey, { slip: text })
      navigate('/slip', { replace: true })
    }
    watch(take())
  }, [text, notebook, navigate, watch])
  const kept = useLiveQuery(async () => (await notebook.draft(currentKey)) ?? {}, [notebook])
  if (trouble) return <NoBallot reason={trouble} />
  if (text !== undefined || !kept) return null
  const read: ReadSlip =
    kept.slip === undefined ? { ok: false, reason: 'not-a-slip' } : readText(kept.slip)
  return read.ok ? (
    <OwnBallot key={keyOf(read.slip)} slip={read.slip} keptUnder={keyOf(read.slip)} />
  ) : (
    <NoBallot reason={read.reason} />
  )
}

const keyOf = ({ tag, slot, issue }: BallotSlip) => `own/${tag}-${slot}-${issue}`

function NoBallot({ reason }: { reason: Exclude<ReadSlip, { ok: true }>['reason'] }) {
  return (
    <>
      <PageHeading>A tasting</PageHeading>
      <EmptyState
        title="No ballot here"
        action={<LinkButton href="#/">To the notebook</LinkButton>}
      >
        {slipTroubleText(reason)}
      </EmptyState>
    </>
  )
}
