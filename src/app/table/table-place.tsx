import { useLiveQuery } from 'dexie-react-hooks'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useServices } from '@/app/services/services.ts'
import { WholeTrialProvider } from '@/app/services/whole-trial-provider.tsx'
import { OpenForm } from './open-form.tsx'
import { OwnTablePage } from './own-table-page.tsx'
import { tableServices } from './table-services.ts'

/** The open table of a trial on the baker's device: the form that opens one, or who holds which part. */
export function TablePlace({ trialId }: { trialId: string }) {
  return (
    <WholeTrialProvider
      key={trialId}
      trialId={trialId}
      waiting={<Progress label="Opening the trial" done={null} />}
      missing={
        <EmptyState
          title="No such trial here"
          action={<LinkButton href="#/">To the notebook</LinkButton>}
        >
          A table is opened from a trial of this notebook.
        </EmptyState>
      }
    >
      <OfTrial trialId={trialId} />
    </WholeTrialProvider>
  )
}

function OfTrial({ trialId }: { trialId: string }) {
  const services = useServices()
  const { store } = tableServices(services)
  const found = useLiveQuery(
    async () => ({ own: (await store.own.get(trialId)) ?? null }),
    [store, trialId],
  )
  if (!found) return <Progress label="Opening the table" done={null} />
  return found.own ? <OwnTablePage own={found.own} /> : <OpenForm trialId={trialId} />
}
