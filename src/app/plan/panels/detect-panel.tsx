import { memo, useDeferredValue, useMemo } from 'react'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { Fold } from '@/app/kit/page/fold.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { SideNote } from '@/app/kit/page/side-note.tsx'
import { useLearnedSpread } from '@/app/plan/page/learned-context.ts'
import { usePlanParts } from '@/app/plan/page/use-plan-parts.ts'
import type { ReachAsked } from '@/app/worker/plan-worker.ts'
import { answerOf, useAnswer } from '@/app/worker/use-answer.ts'
import { designOfPlan } from '@/core/design/design-of-plan.ts'
import { commonSpread } from '@/core/design/spread.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { spreadSourceText } from '@/core/wording/findings/learned-text.ts'
import {
  detectByQuestion,
  detectByQuestionSays,
  detectRefusal,
  detectSentences,
  detectTable,
} from '@/core/wording/plan/detect-text.ts'
import { tellApartReachText } from '@/core/wording/plan/tell-apart-reach-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import styles from './panel.module.css'

const designParts = [
  'levels',
  'factor',
  'tasters',
  'flights',
  'plannedSessions',
  'responses',
  'mainResponseId',
  'doughs',
  'tellApart',
  'expectation',
  'writtenFirst',
] as const

/** What difference this design could show, said before the mix, and what one step more would buy. */
export function DetectPanel() {
  return <Detect plan={useDeferredValue(usePlanParts(designParts))} />
}

const Detect = memo(function Detect({ plan }: { plan: Plan }) {
  const learned = useLearnedSpread(plan)
  const spread = learned?.spread ?? commonSpread
  const design = useMemo(() => designOfPlan(plan, spread), [plan, spread])
  const { tellApart, plannedSessions } = plan
  const asked = useMemo(
    () => ({ design, sets: { tellApart, tasters: plan.tasters, plannedSessions } }),
    [design, tellApart, plan.tasters, plannedSessions],
  )
  const reach = answerOf(
    useAnswer('plan', asked, (service, question: ReachAsked) => service.reach(question)),
  )
  const sets = reach?.tellApart ? (
    <p className={styles.words}>{tellApartReachText(reach.tellApart)}</p>
  ) : null
  const refusal = detectRefusal(plan)
  if (refusal !== null)
    return (
      <Section id="plan-detect" title="What it could show">
        <p className={styles.soft}>{refusal}</p>
        {sets}
      </Section>
    )
  if (!reach)
    return (
      <Section id="plan-detect" title="What it could show">
        <Progress label="Working out what would show" done={null} />
      </Section>
    )
  const { head, rows } = detectTable(reach.help)
  const questions = detectByQuestion(reach.help)
  return (
    <Section id="plan-detect" title="What it could show">
      <p className={styles.words}>{detectSentences(reach.help.now, plan)}</p>
      {sets}
      {learned ? (
        <p className={styles.soft}>
          {`With the scatter learned from ${countText(learned.trialIds.length, 'finished trial')} of these tasters.`}
        </p>
      ) : null}
      <Fold
        level={3}
        name="What one step more would buy"
        result={`${countText(rows.length - 1, 'step')}, each with the smallest difference that would show`}
      >
        <LedgerTable
          caption="Smallest difference that would show, in points"
          columns={head.slice(1).map((claim) => ({ key: claim, head: claim }))}
          rows={rows.map(([step = '', ...cells]) => ({ key: step, head: step, cells }))}
        />
        <LedgerTable
          caption={`${questions.head[0]}, by what the verdict will ask`}
          columns={questions.head.slice(1).map((claim) => ({ key: claim, head: claim }))}
          rows={questions.rows.map(([step = '', ...cells]) => ({ key: step, head: step, cells }))}
        />
        <p className={styles.soft}>{detectByQuestionSays}</p>
        <SideNote label="What this rests on">
          <p>
            “Would show” is the true difference between two levels that the comparison of all pairs
            finds four times in five.{' '}
            {spreadSourceText(spread, learned?.learned ?? [], learned?.trialIds.length ?? 0)}
          </p>
        </SideNote>
      </Fold>
    </Section>
  )
})
