import { Component, type ReactNode } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { ErrorNote } from './error-note.tsx'

interface ErrorBoundaryProps {
  /** What failed, as a person would call it: "the findings". */
  what: string
  children: ReactNode
}

/** Keeps one broken part from taking the page with it, and says that what was kept is safe. */
export class ErrorBoundary extends Component<
  ErrorBoundaryProps,
  { cause: unknown; failed: boolean }
> {
  override state: { cause: unknown; failed: boolean } = { cause: undefined, failed: false }

  static getDerivedStateFromError(cause: unknown) {
    return { cause, failed: true }
  }

  override render() {
    if (!this.state.failed) return this.props.children
    const { cause } = this.state
    return (
      <ErrorNote
        title={`Something went wrong in ${this.props.what}.`}
        action={
          <Button kind="plain" onPress={() => this.setState({ failed: false, cause: undefined })}>
            Try again
          </Button>
        }
      >
        <p>Everything that was logged or kept before is safe in the notebook.</p>
        <p>
          The program says: <q>{cause instanceof Error ? cause.message : String(cause)}</q>
        </p>
      </ErrorNote>
    )
  }
}
