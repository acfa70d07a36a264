import type { ReactNode } from 'react'
import { Section } from '@/app/kit/page/section.tsx'
import { type PlanPartId, partTitle } from './part-names.ts'

interface Props {
  id: PlanPartId
  aside?: ReactNode
  children: ReactNode
}

/** One part of the page, under its name; in a row that opens, that row is its heading. */
export function PlanSection({ id, aside, children }: Props) {
  return (
    <Section id={id} title={partTitle(id)} aside={aside}>
      {children}
    </Section>
  )
}
