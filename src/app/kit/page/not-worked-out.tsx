import { Button } from '@/app/kit/press/button.tsx'
import { ErrorNote } from './error-note.tsx'

/** What was to be worked out off the screen and was not: what the program says of it, what is safe, and the page opened anew. */
export function NotWorkedOut({ title, error }: { title: string; error: Error }) {
  return (
    <ErrorNote
      title={title}
      action={<Button onPress={() => window.location.reload()}>Reload</Button>}
    >
      <p>
        The program says: <q>{error.message}</q> What was recorded is untouched. Reload the page,
        and report it as a bug if it comes again.
      </p>
    </ErrorNote>
  )
}
