import { useLiveQuery } from 'dexie-react-hooks'
import { AfterFrame } from '@/app/kit/page/after-frame.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { PlanOpen } from '@/app/plan/page/plan-open.tsx'
import { useServices } from '@/app/services/services.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'

/** The Plan place of a trial: one page from the question to the temperatures, with what follows from it beside it. */
export function PlanPlace() {
  const { notebook } = useServices()
  const { id } = useWholeTrial().trial
  const kitchen = useLiveQuery(() => notebook.kitchen(), [notebook])
  const drafts = useLiveQuery(
    async () => (await notebook.draft(draftKey(id))) ?? {},
    [notebook, id],
  )
  if (!kitchen || !drafts) return opening
  return (
    <AfterFrame key={id} waiting={opening}>
      <PlanOpen kitchen={kitchen} drafts={drafts} draftKey={draftKey(id)} />
    </AfterFrame>
  )
}

const opening = <Progress label="Opening the plan" done={null} />

const draftKey = (trialId: string) => `plan/${trialId}`
