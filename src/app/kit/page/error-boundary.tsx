import { Component, lazy, type ReactNode, Suspense } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { ErrorNote } from './error-note.tsx'
import type { FailureNoteProps } from './failure-note.tsx'

/** The words of every failure are many and seldom needed: fetched then. Where not even they come, it says less. */
const FailureNote = lazy(async () => {
  try {
    return { default: (await import('./failure-note.tsx')).FailureNote }
  } catch {
    return { default: ShortNote }
  }
})

function ShortNote({ what, onAgain }: FailureNoteProps) {
  return (
    <ErrorNote
      title={`Something went wrong in ${what}.`}
      action={<Button onPress={onAgain}>Try again</Button>}
    >
      What was kept before is safe in the notebook. Reload the page if it comes back.
    </ErrorNote>
  )
}

interface ErrorBoundaryProps {
  /** What failed, as a person would call it: "the findings". */
  what: string
  /** What the part is made of: when it changes after a failure, the part is tried again by itself. */
  of?: unknown
  children: ReactNode
}

/** Keeps one broken part from taking the page with it, and says what is kept and what to do. */
export class ErrorBoundary extends Component<
  ErrorBoundaryProps,
  { cause: unknown; failed: boolean }
> {
  override state: { cause: unknown; failed: boolean } = { cause: undefined, failed: false }

  static getDerivedStateFromError(cause: unknown) {
    return { cause, failed: true }
  }

  override componentDidUpdate(before: ErrorBoundaryProps) {
    if (this.state.failed && before.of !== this.props.of)
      this.setState({ failed: false, cause: undefined })
  }

  override render() {
    if (!this.state.failed) return this.props.children
    const { cause } = this.state
    const again = () => this.setState({ failed: false, cause: undefined })
    return (
      <Suspense fallback={null}>
        <FailureNote what={this.props.what} cause={cause} onAgain={again} />
      </Suspense>
    )
  }
}
