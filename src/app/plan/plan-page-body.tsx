import { memo, useEffect, useState } from 'react'
import { PageHeading } from '@/app/kit/page-heading.tsx'
import { BeginSession } from './begin-session.tsx'
import { DayCostPanel } from './day-cost-panel.tsx'
import { DetectPanel } from './detect-panel.tsx'
import { FactorSection } from './factor-section.tsx'
import { FairnessPanel } from './fairness-panel.tsx'
import { FormulaSection } from './formula-section.tsx'
import { JumpWatch } from './jump-watch.tsx'
import { KitchenSection } from './kitchen-section.tsx'
import { LevelsSection } from './levels-section.tsx'
import { MethodSection } from './method-section.tsx'
import { PanelWay } from './panel-way.tsx'
import { PiecesSection } from './pieces-section.tsx'
import styles from './plan-page-body.module.css'
import { PlanState } from './plan-state.tsx'
import { PrintSheets } from './print-sheets.tsx'
import { QuestionSection } from './question-section.tsx'
import { ResponsesSection } from './responses-section.tsx'
import { SectionWay } from './section-way.tsx'
import { SessionsSection } from './sessions-section.tsx'
import { StartWays } from './start-ways.tsx'
import { TastersSection } from './tasters-section.tsx'
import { TemperaturesSection } from './temperatures-section.tsx'
import { WaterPanel } from './water-panel.tsx'
import { WeighSheetPanel } from './weigh-sheet-panel.tsx'

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
          <SectionWay />
          <StartWays />
          <QuestionSection />
          <FactorSection />
          <LevelsSection />
          <FormulaSection />
          <PiecesSection />
          <MethodSection />
          <ResponsesSection />
          <TastersSection />
          <SessionsSection />
          <KitchenSection />
          <TemperaturesSection />
        </div>
        <aside className={styles.side} aria-label="What follows from the plan">
          <PanelWay />
          <BeginSession />
          <WeighSheetPanel />
          <WaterPanel />
          <FairnessPanel />
          <DetectPanel />
          <DayCostPanel />
          <PrintSheets />
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
