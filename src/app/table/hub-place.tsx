import { useEffect, useState } from 'react'
import { useHashLocation } from 'wouter/use-hash-location'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useServices } from '@/app/services/services.ts'
import { hubTroubleText } from '@/core/wording/table/table-text.ts'
import { readHubCode } from '@/table/hub-code.ts'
import { hubKey } from './hub-kept.ts'

/** The link that a hub printed, opened in the browser: it is kept for the next table and goes from the address. */
export function HubPlace({ text }: { text?: string | undefined }) {
  const { notebook } = useServices()
  const [, navigate] = useHashLocation()
  const watch = useThrown()
  const [problem, setProblem] = useState<string | null>(null)
  useEffect(() => {
    if (text === undefined) return
    const link = `${location.origin}${location.pathname}#/hub/${text}`
    const read = readHubCode(link)
    if (!read.ok) return setProblem(hubTroubleText(read.reason))
    watch(notebook.keepDraft(hubKey, { link }).then(() => navigate('/hub', { replace: true })))
  }, [text, notebook, navigate, watch])
  if (text !== undefined && problem === null)
    return <Progress label="Keeping the hub’s link" done={null} />
  return (
    <>
      <PageHeading>The hub of this kitchen</PageHeading>
      <EmptyState
        title={problem === null ? 'The hub is known here now' : 'The hub’s link does not read'}
        action={<LinkButton href="#/">To the notebook</LinkButton>}
      >
        {problem ??
          'Open a trial, and choose Open a table in its menu: several devices can then work it together.'}
      </EmptyState>
    </>
  )
}
