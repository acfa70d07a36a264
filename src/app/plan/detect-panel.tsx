import { memo, useMemo } from 'react'
import { LedgerTable } from '@/app/kit/ledger-table.tsx'
import { Section } from '@/app/kit/section.tsx'
import { SideNote } from '@/app/kit/side-note.tsx'
import { usePlanWork } from '@/app/worker/use-plan-work.ts'
import { designOfPlan } from '@/core/design/design-of-plan.ts'
import type { TrialDesign } from '@/core/design/detectable.ts'
import { detectRows, detectSentence, notOnPoints } from './detect-words.ts'
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
export const DetectPanel = memo(function DetectPanel() {
  const plan = usePlanParts(designParts)
  const { levels, tasters, flights, sessions, unit, margin } = designOfPlan(plan)
  const design = useMemo(
    () => ({ levels, levelValues: null, tasters, flights, sessions, unit, margin }),
    [levels, tasters, flights, sessions, unit, margin],
  )
  const help = usePlanWork(design, (service, asked: TrialDesign) => service.help(asked))
  const main = plan.responses.find(({ id }) => id === plan.mainResponseId)
  if (main && main.scale.kind !== 'nine-point')
    return (
      <Section id="plan-detect" title="What this design could show">
        <p className={styles.soft}>{notOnPoints(main)}</p>
      </Section>
    )
  if (!help)
    return (
      <Section id="plan-detect" title="What this design could show">
        <p className={styles.soft}>Working out what would show.</p>
      </Section>
    )
  return (
    <Section id="plan-detect" title="What this design could show">
      <p className={styles.words}>{detectSentence(help.now, main)}</p>
      <LedgerTable
        caption="Smallest difference that would show, in points"
        columns={[
          { key: 'pieces', head: 'These pieces' },
          { key: 'factor', head: 'The factor' },
        ]}
        rows={detectRows(help)}
      />
      <SideNote label="What this rests on">
        <p>
          “Would show” is the true difference between two levels that the comparison of all pairs
          finds four times in five. It takes spreads on a nine-point scale that are common practice,
          without a source: 1.2 from answer to answer, 0.6 between tasters’ own preferences, 0.6
          between pieces and 0.4 between doughs.
        </p>
      </SideNote>
    </Section>
  )
})
