import { memo, useEffect, useState } from 'react'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { FactorSection } from '@/app/plan/asked/factor-section.tsx'
import { QuestionSection } from '@/app/plan/asked/question-section.tsx'
import { ResponsesSection } from '@/app/plan/asked/responses-section.tsx'
import { DaySection } from '@/app/plan/clock/day-section.tsx'
import { FormulaSection } from '@/app/plan/formula/formula-section.tsx'
import { PiecesSection } from '@/app/plan/formula/pieces-section.tsx'
import { KitchenSection } from '@/app/plan/kitchen/kitchen-section.tsx'
import { LevelsSection } from '@/app/plan/levels/levels-section.tsx'
import { MethodSection } from '@/app/plan/method/method-section.tsx'
import { TemperaturesSection } from '@/app/plan/method/temperatures-section.tsx'
import { DayCostPanel } from '@/app/plan/panels/day-cost-panel.tsx'
import { DetectPanel } from '@/app/plan/panels/detect-panel.tsx'
import { FairnessPanel } from '@/app/plan/panels/fairness-panel.tsx'
import { WaterPanel } from '@/app/plan/panels/water-panel.tsx'
import { WeighSheetPanel } from '@/app/plan/panels/weigh-sheet-panel.tsx'
import { PrintSheets } from '@/app/plan/paper/print-sheets.tsx'
import { SessionsSection } from '@/app/plan/people/sessions-section.tsx'
import { TastersSection } from '@/app/plan/people/tasters-section.tsx'
import { StartWays } from '@/app/plan/start/start-ways.tsx'
import { BeginSession } from './begin-session.tsx'
import { JumpWatch } from './jump-watch.tsx'
import { PanelWay } from './panel-way.tsx'
import styles from './plan-page-body.module.css'
import { PlanPart } from './plan-part.tsx'
import { PlanState } from './plan-state.tsx'
import { SectionWay } from './section-way.tsx'

const drawnMilliseconds = 1000

/** The whole page: what the person fills on one side, what follows from it on the other (below, on a phone). */
export const PlanPageBody = memo(function PlanPageBody() {
  const drawn = useDrawn()
  return (
    <div className={`${styles.plan} ${drawn ? styles.drawn : ''}`}>
      <PageHeading>Plan</PageHeading>
      <PlanState />
      <div className={styles.page}>
        <div className={styles.form}>
          <PlanPart what="the way through the plan">
            <SectionWay />
          </PlanPart>
          <PlanPart what="the ways to start">
            <StartWays />
          </PlanPart>
          <PlanPart what="the question">
            <QuestionSection />
          </PlanPart>
          <PlanPart what="the factor">
            <FactorSection />
          </PlanPart>
          <PlanPart what="the levels">
            <LevelsSection />
          </PlanPart>
          <PlanPart what="the formula">
            <FormulaSection />
          </PlanPart>
          <PlanPart what="the pieces">
            <PiecesSection />
          </PlanPart>
          <PlanPart what="the method">
            <MethodSection />
          </PlanPart>
          <PlanPart what="the day by the clock">
            <DaySection />
          </PlanPart>
          <PlanPart what="the responses">
            <ResponsesSection />
          </PlanPart>
          <PlanPart what="the tasters">
            <TastersSection />
          </PlanPart>
          <PlanPart what="the sessions">
            <SessionsSection />
          </PlanPart>
          <PlanPart what="the kitchen">
            <KitchenSection />
          </PlanPart>
          <PlanPart what="the temperatures">
            <TemperaturesSection />
          </PlanPart>
        </div>
        <aside className={styles.side} aria-label="What follows from the plan">
          <PlanPart what="the way through the panels">
            <PanelWay />
          </PlanPart>
          <PlanPart what="the start of a session">
            <BeginSession />
          </PlanPart>
          <PlanPart what="the weigh sheet">
            <WeighSheetPanel />
          </PlanPart>
          <PlanPart what="the water">
            <WaterPanel />
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
        </aside>
      </div>
      <JumpWatch />
    </div>
  )
})

/** Whether the page has stood long enough for everything on it to have been drawn once. */
function useDrawn(): boolean {
  const [drawn, setDrawn] = useState(false)
  useEffect(() => {
    const timer = setTimeout(() => setDrawn(true), drawnMilliseconds)
    return () => clearTimeout(timer)
  }, [])
  return drawn
}
