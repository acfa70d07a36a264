import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import type { NextStep } from '@/core/findings/judged/next-steps.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { toldTrial } from '@/core/whole-trial/told-trial.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { CivilClock } from '@/core/wording/words/civil-time.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { answerSection } from './answer-section.ts'
import { cautionsSection } from './cautions-section.ts'
import { curvesOf } from './curves-of.ts'
import { departuresSection } from './departures-section.ts'
import { designSection } from './design-section.ts'
import { failuresSection } from './failures-section.ts'
import { fairnessSection } from './fairness-section.ts'
import { happenedSection } from './happened-section.ts'
import { lettersOf } from './letters-of.ts'
import { originSection } from './origin-section.ts'
import { pageSections } from './pages/page-sections.ts'
import { photosSection } from './photos-section.ts'
import { questionSection } from './question-section.ts'
import type { ReportDocument } from './report-block.ts'
import { resultSections } from './results-section.ts'
import { tableSection } from './table-section.ts'
import { weightsSection } from './weights-section.ts'

export interface ReportInput {
  whole: WholeTrial
  scores: ScoreTable
  findings: FindingsDocument
  /** The curves of `curvesOf`, where they were fitted already. */
  curves?: ReturnType<typeof curvesOf>
  /** What to do next, the most pressing first. */
  next: readonly NextStep[]
  /** The version of the program that makes the report. */
  version: string
  /** SHA-256 of the trial file, in hex; left out where nobody reckoned it. */
  dataSha256?: string
  /** Gives the days and hours of the log. */
  clock: CivilClock
  /** True when the one who asks knows that a sealed trial is looked at. */
  unsealed: boolean
}

export type MadeReport =
  | { ok: true; document: ReportDocument }
  | { ok: false; reason: 'still-sealed' }

/**
 * The report of a trial: two pages from the question to the cautions, and an appendix by which someone else can check them.
 * Its numbers are those of the findings document it is given. A sealed trial gives none.
 */
export function reportDocument(input: ReportInput): MadeReport {
  const { whole: all, scores, findings, next, version, clock } = input
  if (!input.unsealed && sealed(all)) return { ok: false, reason: 'still-sealed' }
  const whole = toldTrial(all)
  const plan = planInForce(whole)
  const found = {
    scores,
    findings,
    curves: input.curves ?? curvesOf(scores, findings),
    letters: lettersOf(whole),
    nameOf: (taster: string) => tasterName(taster, whole.kitchen),
  }
  return {
    ok: true,
    document: {
      title: plan.question,
      note: whole.trial.note,
      pages: pageSections(whole, found, { next, clock, version, dataSha256: input.dataSha256 }),
      appendix: [
        answerSection(found, next),
        questionSection(plan),
        designSection(whole),
        weightsSection(plan, whole.kitchen),
        happenedSection(whole, clock),
        ...resultSections(found),
        ...tableSection(all, found.nameOf),
        failuresSection(whole),
        departuresSection(whole),
        ...photosSection(whole, clock),
        fairnessSection(whole),
        originSection(all, clock, { dataSha256: input.dataSha256, version }),
        cautionsSection(),
      ],
      madeBy: `Made by Evenhand ${version}.`,
    },
  }
}
