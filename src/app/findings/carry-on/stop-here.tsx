import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { useServices } from '@/app/services/services.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** Leaves it at what one evening yielded: the trial is put away with its answer, and the press to take it back stands in its place. */
export function StopHere({ whole }: { whole: WholeTrial }) {
  const { notebook } = useServices()
  const { id, archivedAt } = whole.trial
  const putAway = (away: boolean) => notebook.archive(id, away)
  if (archivedAt === undefined) return <Button onPress={() => putAway(true)}>Stop here</Button>
  return (
    <>
      <p {...landing}>Put away, with its order of liking. It is found in the notebook’s menu.</p>
      <Button kind="quiet" onPress={() => putAway(false)}>
        Take it back
      </Button>
    </>
  )
}
