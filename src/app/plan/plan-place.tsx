import { useLiveQuery } from 'dexie-react-hooks'
import { Progress } from '@/app/kit/page/progress.tsx'
import { PlanOpen } from '@/app/plan/page/plan-open.tsx'
import { useServices } from '@/app/services/services.ts'

/** The Plan place of a trial: one page from the question to the temperatures, with what follows from it beside it. */
export function PlanPlace({ trialId }: { trialId: string }) {
  const { notebook } = useServices()
  const found = useLiveQuery(async () => {
    const [whole, kitchen] = await Promise.all([notebook.wholeTrial(trialId), notebook.kitchen()])
    return { whole, kitchen }
  }, [notebook, trialId])
  const drafts = useLiveQuery(
    async () => (await notebook.draft(draftKey(trialId))) ?? {},
    [notebook, trialId],
  )
  if (!found?.whole || !drafts) return <Progress label="Opening the plan" done={null} />
  return (
    <PlanOpen
      key={trialId}
      whole={found.whole}
      kitchen={found.kitchen}
      drafts={drafts}
      draftKey={draftKey(trialId)}
    />
  )
}

const draftKey = (trialId: string) => `plan/${trialId}`
