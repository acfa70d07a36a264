import type { ReactNode } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { PlanPageContext } from '@/app/plan/page/plan-page-context.ts'
import { createPlanPage } from '@/app/plan/page/plan-page-store.ts'
import { WholeTrialContext } from '@/app/services/use-whole-trial.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** A paper of a plan as it goes to the printer, with the sessions of its trial. */
export function onPaper(part: ReactNode, plan: Plan, whole: WholeTrial): string {
  const nothing = { keepDrafts: async () => {}, judge: () => [], refuses: () => null }
  const keepPlan = () => Promise.reject(new Error('nothing is kept here'))
  const store = createPlanPage({ plan, trialRevision: 1 }, {}, [...whole.kitchen], {
    ...nothing,
    keepPlan,
  })
  return renderToStaticMarkup(
    <WholeTrialContext value={whole}>
      <PlanPageContext value={store}>{part}</PlanPageContext>
    </WholeTrialContext>,
  )
}

/** What is read of a piece of markup: its words, blanks between them. */
export const wordsOf = (html: string) =>
  html
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll('&#x27;', "'")
    .replace(/\s+/g, ' ')
    .trim()
