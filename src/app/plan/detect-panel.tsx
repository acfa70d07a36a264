import { memo, useDeferredValue, useMemo } from 'react'
import { LedgerTable } from '@/app/kit/ledger-table.tsx'
import { Section } from '@/app/kit/section.tsx'
import { SideNote } from '@/app/kit/side-note.tsx'
import { usePlanWork } from '@/app/worker/use-plan-work.ts'
import { designOfPlan } from '@/core/design/design-of-plan.ts'
import type { TrialDesign } from '@/core/design/detectable.ts'
import { commonSpread } from '@/core/design/spread.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { detectRefusal, detectSentences, detectTable } from '@/core/wording/detect-text.ts'
import { spreadSourceText } from '@/core/wording/learned-text.ts'
import { countText } from '@/core/wording/list-text.ts'
import { useLearnedSpread } from './learned-context.ts'
import styles from './panel.module.css'
import { usePlanParts } from './use-plan-parts.ts'

const designParts = [
  'levels',
  'factor',
  'tasters',
  'flights',
  'plannedSessions',
  'responses',
  'mainResponseId',
  'doughs',
] as const

/** What difference this design could show, said before the mix, and what one step more would buy. */
export function DetectPanel() {
  return <Detect plan={useDeferredValue(usePlanParts(designParts))} />
}

const Detect = memo(function Detect({ plan }: { plan: Plan }) {
  const { levels, tasters, flights, sessions, unit, margin } = designOfPlan(plan)
  const learned = useLearnedSpread(plan)
  const spread = learned?.spread ?? commonSpread
  const design = useMemo(
    () => ({ levels, levelValues: null, tasters, flights, sessions, unit, margin, spread }),
    [levels, tasters, flights, sessions, unit, margin, spread],
  )
  const help = usePlanWork(design, (service, asked: TrialDesign) => service.help(asked))
  const refusal = detectRefusal(plan)
  if (refusal !== null)
    return (
      <Section id="plan-detect" title="What this design could show">
        <p className={styles.soft}>{refusal}</p>
      </Section>
    )
  if (!help)
    return (
      <Section id="plan-detect" title="What this design could show">
        <p className={styles.soft}>Working out what would show.</p>
      </Section>
    )
  const { head, rows } = detectTable(help)
  return (
    <Section id="plan-detect" title="What this design could show">
      <p className={styles.words}>{detectSentences(help.now, plan)}</p>
      <LedgerTable
        caption="Smallest difference that would show, in points"
        columns={head.slice(1).map((claim) => ({ key: claim, head: claim }))}
        rows={rows.map(([step = '', ...cells]) => ({ key: step, head: step, cells }))}
      />
      {learned ? (
        <p className={styles.soft}>
          {`With the scatter learned from ${countText(learned.trialIds.length, 'finished trial')} of these tasters.`}
        </p>
      ) : null}
      <SideNote label="What this rests on">
        <p>
          “Would show” is the true difference between two levels that the comparison of all pairs
          finds four times in five.{' '}
          {spreadSourceText(spread, learned?.learned ?? [], learned?.trialIds.length ?? 0)}
        </p>
      </SideNote>
    </Section>
  )
})
