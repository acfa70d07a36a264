import { unitOf } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { stepAtLevel } from '@/core/trial/step-at-level.ts'
import { ownDegreeSign, plainDegreesFigure } from '@/core/units/temperature-text.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { unitSentence } from '@/core/wording/findings/rests-on.ts'
import { endsByText, heldText, servingText, toleranceText } from '@/core/wording/plan/plan-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { countText, listText } from '@/core/wording/words/list-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import type { ReportSection, TableBlock } from './report-block.ts'

/** How the trial was laid out: unit, sessions, flights, serving, tasters and the method step by step. */
export function designSection(whole: WholeTrial): ReportSection {
  const plan = planInForce(whole)
  const unit = unitOf(plan)
  const baker = plan.tasters.filter((taster) => taster.baker)
  const knowing = plan.tasters.filter(({ knows }) => knows)
  const names = (tasters: typeof plan.tasters) =>
    listText(tasters.map(({ tasterId }) => tasterName(tasterId, whole.kitchen)))
  return {
    id: 'design',
    title: 'Design',
    blocks: [
      { kind: 'text', text: unitSentence({ unit }) },
      {
        kind: 'facts',
        rows: [
          { term: 'Planned', text: countText(plan.plannedSessions, 'session') },
          { term: 'Served', text: servingText(plan) },
          ...(plan.servingRule === '' ? [] : [{ term: 'Each serving', text: plan.servingRule }]),
          { term: 'Held', text: heldText(plan) },
          {
            term: 'Tasters',
            text:
              plan.tasters.length === 0
                ? 'none'
                : `${names(plan.tasters)}${baker.length > 0 ? `; ${names(baker)} baked` : ''}`,
          },
          {
            term: 'Blind',
            text:
              knowing.length === 0
                ? 'all tasters'
                : `all but ${names(knowing)}, who knew which is which`,
          },
          {
            term: 'Codes',
            text: plan.keyKeptBy === 'helper' ? 'kept by a helper' : 'kept by the baker',
          },
          {
            term: 'Talk',
            text: plan.tastersTalk ? 'tasters could hear one another' : 'tasters kept silent',
          },
        ],
      },
      stepsTable(plan),
    ],
  }
}

function stepsTable(plan: Plan): TableBlock {
  return {
    kind: 'table',
    caption: 'Method',
    head: ['Step', 'Each', 'Times', 'Hands on', 'Wait', 'Tolerance', 'Ends', ownDegreeSign()],
    rows: plan.steps.map((step) => [
      step.name,
      step.per === 'batch' && step.once ? 'all doughs at once' : step.per,
      byLevel(plan, step, (own) => String(own?.repeats ?? 0)),
      durationText(step.handsSeconds),
      byLevel(plan, step, (own) => own && durationText(own.waitSeconds)),
      toleranceText(step),
      endsByText(step.endsBy),
      byLevel(plan, step, (own) =>
        own?.celsius === undefined ? null : plainDegreesFigure(Math.round(own.celsius * 10) / 10),
      ),
    ]),
    figures: [false, false, true, true, true, true, false, true],
  }
}

/** One number of a step, or where the factor moves it "by level: 1 h, 2 h"; a level without one says nothing. */
function byLevel(plan: Plan, step: Step, show: (own: Step | null) => string | null): string {
  const owns = plan.levels.map((level) => stepAtLevel(plan.factor, step, level))
  const texts = new Set(
    (owns.length === 0 ? [step] : owns).map(show).filter((text) => text !== null),
  )
  return texts.size > 1 ? `by level: ${[...texts].join(', ')}` : [...texts].join()
}
