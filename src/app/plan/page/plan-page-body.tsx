import type { ReactNode } from 'react'
import { memo } from 'react'
import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { temperatureText } from '@/app/kit/field/temperature-words.ts'
import { useNarrow } from '@/app/kit/look/use-narrow.ts'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { PlanSentences } from '@/app/plan/asked/plan-sentences.tsx'
import { QuestionSection } from '@/app/plan/asked/question-section.tsx'
import { ResponsesSection } from '@/app/plan/asked/responses-section.tsx'
import { DaySection } from '@/app/plan/clock/day-section.tsx'
import { FormulaSection } from '@/app/plan/formula/formula-section.tsx'
import { PiecesSection } from '@/app/plan/formula/pieces-section.tsx'
import { KitchenSection } from '@/app/plan/kitchen/kitchen-section.tsx'
import { PlanRail } from '@/app/plan/levels/plan-rail.tsx'
import { MethodSection } from '@/app/plan/method/method-section.tsx'
import { TemperaturesSection } from '@/app/plan/method/temperatures-section.tsx'
import { DayCostPanel } from '@/app/plan/panels/day-cost-panel.tsx'
import { DetectPanel } from '@/app/plan/panels/detect-panel.tsx'
import { FairnessPanel } from '@/app/plan/panels/fairness-panel.tsx'
import { FairnessContext, useAskedFairness, useFairness } from '@/app/plan/panels/use-fairness.ts'
import { WaterPanel } from '@/app/plan/panels/water-panel.tsx'
import { PrintSheets } from '@/app/plan/paper/print-sheets.tsx'
import { SessionsSection } from '@/app/plan/people/sessions-section.tsx'
import { TastersSection } from '@/app/plan/people/tasters-section.tsx'
import { MethodPart, SheetPart } from '@/app/plan/sheet/worked-parts.tsx'
import { StartWays } from '@/app/plan/start/start-ways.tsx'
import { fairnessCountText } from '@/core/wording/fairness/fairness-text.ts'
import { partResults } from '@/core/wording/plan/part-results.ts'
import { BeginFoot } from './begin-foot.tsx'
import { BeginSession } from './begin-session.tsx'
import { JumpWatch, useArrivalHere } from './jump-watch.tsx'
import { PlanFold } from './plan-fold.tsx'
import styles from './plan-page-body.module.css'
import { usePlanPage } from './plan-page-context.ts'
import { PlanPart } from './plan-part.tsx'
import { PlanState } from './plan-state.tsx'

/**
 * The whole plan: its rail, two sentences whose values open in place, the ledger and the method; beside it whether it can
 * begin and what follows from it. The rest is folded, each row with what stands in it. On a phone more is folded, and the
 * press that begins stays at the foot.
 */
export const PlanPageBody = memo(function PlanPageBody() {
  const narrow = useNarrow()
  return (
    <FairnessProvider>
      <div className={styles.plan}>
        <PageHeading>Plan</PageHeading>
        <PlanPart what="the rail">
          <PlanRail />
        </PlanPart>
        <PlanState />
        <div className={styles.page}>
          <div className={styles.form}>
            {narrow ? (
              <PlanPart what="what is to mend">
                <BeginSession press={false} />
              </PlanPart>
            ) : null}
            <PlanPart what="the sentences of the plan">
              <PlanSentences />
            </PlanPart>
            <PlanPart what="the ways to start">
              <StartWays />
            </PlanPart>
            <SheetPart narrow={narrow} />
            <MethodPart narrow={narrow} />
            <MadeFolds />
            {narrow ? <AskedFolds narrow /> : null}
          </div>
          {narrow ? null : (
            <aside className={styles.side} aria-label="What follows from the plan">
              <PlanPart what="the start of a session">
                <BeginSession press />
              </PlanPart>
              <PlanPart what="the fairness check">
                <FairnessPanel />
              </PlanPart>
              <PlanPart what="what this design could show">
                <DetectPanel />
              </PlanPart>
              <PlanPart what="the day">
                <DayCostPanel />
              </PlanPart>
              <PlanPart what="the sheets on paper">
                <PrintSheets />
              </PlanPart>
              <AskedFolds narrow={false} />
            </aside>
          )}
        </div>
        {narrow ? (
          <PlanPart what="the start of a session">
            <BeginFoot />
          </PlanPart>
        ) : null}
        <JumpWatch />
      </div>
    </FairnessProvider>
  )
})

/** How the dough is made, a row each with what stands in it. */
function MadeFolds() {
  const results = usePartResults()
  return (
    <div className={styles.folds}>
      <PlanFold part="plan-formula" result={results.formula}>
        <FormulaSection />
      </PlanFold>
      <PlanFold part="plan-method" result={results.method}>
        <MethodSection />
      </PlanFold>
      <PlanFold part="plan-clock" result="by dough, by hands and by oven load">
        <DaySection />
      </PlanFold>
      <PlanFold part="plan-temperatures" result={results.water}>
        <WaterPanel />
        <TemperaturesSection />
      </PlanFold>
      <PlanFold part="plan-question" result={results.question}>
        <QuestionSection />
      </PlanFold>
    </div>
  )
}

/** Who, how often and with what, a row each with what stands in it; on a phone with what follows from the plan. */
function AskedFolds({ narrow }: { narrow: boolean }) {
  const results = usePartResults()
  const fairness = useFairness()
  useArrivalHere('plan-fairness', fairness !== null)
  return (
    <div className={styles.folds}>
      <PlanFold part="plan-tasters" result={results.table}>
        <TastersSection />
      </PlanFold>
      <PlanFold part="plan-pieces" result={results.pieces}>
        <PiecesSection />
      </PlanFold>
      <PlanFold part="plan-responses" result={results.responses}>
        <ResponsesSection />
      </PlanFold>
      <PlanFold part="plan-sessions" result={results.sessions}>
        <SessionsSection />
      </PlanFold>
      <PlanFold part="plan-kitchen" result={results.kitchen}>
        <KitchenSection />
      </PlanFold>
      {narrow ? (
        <>
          <PlanFold
            part="plan-fairness"
            result={fairness ? fairnessCountText(fairness.items) : 'being worked out'}
          >
            <FairnessPanel />
          </PlanFold>
          <PlanFold part="plan-detect" result={results.detect}>
            <DetectPanel />
          </PlanFold>
          <PlanFold part="plan-day" result="hours, dough, loads and samples of a session">
            <DayCostPanel />
          </PlanFold>
          <PlanFold part="plan-paper" result="weigh sheet, shopping list, tub labels">
            <PrintSheets />
          </PlanFold>
        </>
      ) : null}
    </div>
  )
}

/** What stands in each folded part of the plan, in one line. */
export function usePartResults() {
  const plan = usePlanPage((page) => page.plan)
  const kitchen = usePlanPage((page) => page.kitchen)
  const unit = useTemperatureUnit()
  return partResults(plan, kitchen, (celsius) => temperatureText(celsius, unit))
}

/** Holds the fairness check of the open plan for the rows, the folded row and the foot that show it. */
export function FairnessProvider({ children }: { children: ReactNode }) {
  return <FairnessContext value={useAskedFairness()}>{children}</FairnessContext>
}
