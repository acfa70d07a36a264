import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Toast } from '@/app/kit/page/toast.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { keepingFailureText } from '@/core/wording/files/keeping-failure-text.ts'
import { PlanClashNote } from './plan-clash-note.tsx'
import { isUnkept, type NotKept } from './plan-page.ts'
import { usePlanPage, usePlanStore } from './plan-page-context.ts'
import styles from './plan-state.module.css'

const keptWords = {
  'not-kept': 'Your last change is not kept yet',
  waits: 'Keeping…',
  kept: 'All you changed is kept',
}

/** What became of the last change: a failed write, a refusal, a next revision, something removed that can come back. */
export function PlanState() {
  const store = usePlanStore()
  const notKept = usePlanPage((page) => page.notKept)
  const revision = usePlanPage((page) => page.newRevision)
  const undo = usePlanPage((page) => page.undo)
  const refused = usePlanPage((page) => page.refused)
  return (
    <>
      <KeptMark />
      {notKept ? <NotKeptNote notKept={notKept} /> : null}
      {revision === null ? null : (
        <Notice kind="know" title={`This is now revision ${revision}.`}>
          A session runs the revision before, which stays as it was. What you change now is for the
          next session.
        </Notice>
      )}
      <PlanClashNote />
      {refused === null ? null : (
        <Toast
          key={refused}
          message={refused}
          onClose={store.getState().dropRefused}
          seconds={30}
        />
      )}
      {undo === null || refused !== null ? null : (
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

/** Alone, since it changes with every key. */
function KeptMark() {
  const unkept = usePlanPage((page) => isUnkept(page.notKept))
  const waiting = usePlanPage((page) => page.waiting)
  const state = unkept ? 'not-kept' : waiting ? 'waits' : 'kept'
  return (
    <p className={styles.kept} data-kept={state}>
      {keptWords[state]}
    </p>
  )
}

function NotKeptNote({ notKept: { reason, detail, rolledBack } }: { notKept: NotKept }) {
  const store = usePlanStore()
  const { title, kept, mend } = keepingFailureText(reason)
  // At the foot, in sight wherever on the page the change was made.
  if (rolledBack)
    return (
      <Toast
        message={`The last change was taken back. ${title} ${kept} ${mend}`}
        onClose={store.getState().giveUp}
        seconds={60}
      />
    )
  return (
    <ErrorNote
      title={`The last change could not be kept. ${title}`}
      action={<Button onPress={() => store.getState().flush()}>Try again</Button>}
    >
      <p>What you typed still stands on this page; the notebook has the plan from before. {mend}</p>
      {reason === null ? (
        <p>
          The program says: <q>{detail}</q>
        </p>
      ) : null}
    </ErrorNote>
  )
}
