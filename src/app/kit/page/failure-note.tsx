import { Button } from '@/app/kit/press/button.tsx'
import { failureReasonOf } from '@/core/record/failure-reason.ts'
import { keepingFailureText } from '@/core/wording/files/keeping-failure-text.ts'
import { ErrorNote } from './error-note.tsx'

export interface FailureNoteProps {
  /** What failed, as a person would call it: "the findings". */
  what: string
  cause: unknown
  onAgain: () => void
}

/** What failed in one part of a page, what is kept and what to do. */
export function FailureNote({ what, cause, onAgain }: FailureNoteProps) {
  const reason = failureReasonOf(cause)
  const { title, kept, mend, press } = keepingFailureText(reason)
  return (
    <ErrorNote
      title={reason === null ? `Something went wrong in ${what}.` : title}
      action={
        press === 'reload' ? (
          <Button kind="plain" onPress={() => window.location.reload()}>
            Reload
          </Button>
        ) : (
          <Button kind="plain" onPress={onAgain}>
            Try again
          </Button>
        )
      }
    >
      <p>
        {kept} {mend}
      </p>
      {reason === null ? (
        <p>
          The program says: <q>{cause instanceof Error ? cause.message : String(cause)}</q>
        </p>
      ) : null}
    </ErrorNote>
  )
}
