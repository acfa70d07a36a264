import type { ReactNode } from 'react'

/** A unit after its figure: smaller and lighter. */
export function UnitText({ children }: { children: ReactNode }) {
  return (
    <span style={{ color: 'var(--soft)', fontSize: '0.8em', fontWeight: 400 }}>{children}</span>
  )
}
