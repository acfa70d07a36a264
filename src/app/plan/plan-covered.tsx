import { Button } from '@/app/kit/button.tsx'
import { LinkButton } from '@/app/kit/link-button.tsx'
import { PageHeading } from '@/app/kit/page-heading.tsx'
import { useServices } from '@/app/services/services.ts'
import type { Session } from '@/core/session/session-record.ts'

interface Props {
  session: Session
  onLook: () => void
}

/** What stands in place of the plan while a tasting is sealed: it would name the levels. A look is possible and recorded. */
export function PlanCovered({ session, onLook }: Props) {
  const { notebook } = useServices()
  const look = async () => {
    await notebook.log({
      kind: 'peeked',
      trialId: session.trialId,
      sessionId: session.id,
      about: { kind: 'session', id: session.id },
    })
    onLook()
  }
  return (
    <>
      <PageHeading>Plan</PageHeading>
      <p>
        A tasting is sealed. The plan names every level, so it stays covered until the last ballot
        is in or the tasting is closed.
      </p>
      <LinkButton href={`#/trial/${session.trialId}/tasting`} kind="primary">
        Go to the tasting
      </LinkButton>{' '}
      <Button onPress={look}>Look anyway, and have it recorded</Button>
    </>
  )
}
