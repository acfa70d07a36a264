import { Component, type ReactNode } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { failureReasonOf } from '@/core/record/failure-reason.ts'
import { keepingFailureText } from '@/core/wording/files/keeping-failure-text.ts'
import { ErrorNote } from './error-note.tsx'

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
    const reason = failureReasonOf(cause)
    const { title, kept, mend, press } = keepingFailureText(reason)
    return (
      <ErrorNote
        title={reason === null ? `Something went wrong in ${this.props.what}.` : title}
        action={
          press === 'reload' ? (
            <Button kind="plain" onPress={() => window.location.reload()}>
              Reload
            </Button>
          ) : (
            <Button kind="plain" onPress={() => this.setState({ failed: false, cause: undefined })}>
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
}
