import type { ReactNode } from 'react'
import { Section } from '@/app/kit/section.tsx'

/** Where the fairness check of the plan stands: what rides along with the factor, how much, and what to do about it. */
export function FairnessSlot({ children }: { children?: ReactNode }) {
  if (!children) return null
  return <Section title="Fairness check">{children}</Section>
}
