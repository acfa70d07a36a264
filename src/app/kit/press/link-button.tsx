import type { ReactNode } from 'react'
import { type ButtonKind, type ButtonSize, buttonLook } from './button.tsx'

interface LinkButtonProps {
  /** An address inside the app, such as "#/kitchen". */
  href: string
  children: ReactNode
  kind?: ButtonKind
  size?: ButtonSize
}

/** A way to another page that looks like a button. */
export function LinkButton({ href, children, kind, size }: LinkButtonProps) {
  return (
    <a href={href} className={buttonLook(kind, size)}>
      {children}
    </a>
  )
}
