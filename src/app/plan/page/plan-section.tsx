import type { ReactNode } from 'react'
import { Section } from '@/app/kit/page/section.tsx'
import { type PlanSectionId, planSections } from './section-names.ts'

interface Props {
  id: PlanSectionId
  aside?: ReactNode
  children: ReactNode
}

/** One part of the page, under its name and at the place of the plan it fills. */
export function PlanSection({ id, aside, children }: Props) {
  const section = planSections.find((each) => each.id === id)
  return (
    <div data-path={section?.path}>
      <Section id={id} title={section?.title ?? ''} aside={aside}>
        {children}
      </Section>
    </div>
  )
}
