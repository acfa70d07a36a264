import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { movedOnText } from '@/core/wording/bench/moved-on-text.ts'
import { keepingFailureText } from '@/core/wording/files/keeping-failure-text.ts'
import { useBench } from './bench-context.ts'

/** Why the last press was not logged, until the next one: the log had moved on, or the notebook could not keep it. */
export function NotLogged() {
  const { notLogged, plan, session } = useBench()
  if (notLogged === null) return null
  if (notLogged.why === 'moved-on')
    return (
      <ErrorNote title="This press came too late">
        {movedOnText(notLogged.movedOn, plan, session)}
      </ErrorNote>
    )
  const { title, kept, mend } = keepingFailureText(notLogged.reason)
  return (
    <ErrorNote title={`This press was not logged. ${title}`}>
      <p>
        {kept} {mend}
      </p>
      {notLogged.reason === null ? (
        <p>
          The program says: <q>{notLogged.detail}</q>
        </p>
      ) : null}
    </ErrorNote>
  )
}
