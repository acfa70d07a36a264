import type { ReactNode } from 'react'
import { landing } from '@/app/kit/press/keep-focus.ts'

/** The one h1 of a page; the frame moves focus here at every navigation. */
export function PageHeading({ children }: { children: ReactNode }) {
  return (
    <h1 {...landing} data-page-heading="">
      {children}
    </h1>
  )
}
