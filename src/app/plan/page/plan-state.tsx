import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Toast } from '@/app/kit/page/toast.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { usePlanPage, usePlanStore } from './plan-page-context.ts'

/** What became of the last change: a failed write, a next revision, something removed that can come back. */
export function PlanState() {
  const store = usePlanStore()
  const notKept = usePlanPage((page) => page.notKept)
  const revision = usePlanPage((page) => page.newRevision)
  const undo = usePlanPage((page) => page.undo)
  return (
    <>
      {notKept === null ? null : (
        <ErrorNote
          title="The last change could not be kept."
          action={<Button onPress={() => store.getState().flush()}>Try again</Button>}
        >
          What you typed still stands on this page; the notebook has the plan from before. {notKept}
        </ErrorNote>
      )}
      {revision === null ? null : (
        <Notice kind="know" title={`This is now revision ${revision}.`}>
          A session runs the revision before, which stays as it was. What you change now is for the
          next session.
        </Notice>
      )}
      {undo === null ? null : (
        <Toast
          key={undo.said}
          message={undo.said}
          onUndo={store.getState().takeBack}
          onClose={store.getState().dropUndo}
        />
      )}
    </>
  )
}
