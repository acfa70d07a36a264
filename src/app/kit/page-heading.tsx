import type { ReactNode } from 'react'

/** The one h1 of a page; the frame moves focus here at every navigation. */
export function PageHeading({ children }: { children: ReactNode }) {
  return (
    <h1 tabIndex={-1} data-page-heading="">
      {children}
    </h1>
  )
}
