import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { PadEntry } from '@/app/bench/pad/pad-entry.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { stepText } from '@/core/wording/bench/event-text.ts'
import { amountCheck } from './amount-checks.ts'
import { BackPress } from './back-press.tsx'
import type { EntryProps } from './entry-props.ts'

/** How many folds the last folding of the dough in front was. */
export function FoldsEntry({ unit, onKept }: EntryProps) {
  const { log, events, plan } = useBench()
  const folding = plan.steps.filter(({ kind }) => kind === 'fold').map(({ id }) => id)
  const begun = events.findLast(
    (event) =>
      event.kind === 'step-started' && event.about.id === unit.id && folding.includes(event.stepId),
  )
  const of = begun?.kind === 'step-started' ? begun : null
  const stepId = of?.stepId ?? folding[0] ?? ''
  const repeat = of?.repeat ?? 1
  const last = events.findLast(({ kind }) => kind === 'folded')
  return (
    <PadEntry
      label={`Folds in ${stepText(plan, stepId, repeat)}`}
      unit=""
      check={amountCheck.folds}
      draftName={`folds/${unit.id}/${stepId}/${repeat}`}
      beside={<BackPress onPress={onKept} />}
      {...(last?.kind === 'folded' ? { hint: `Last ${last.folds}.` } : {})}
      onKeep={async (folds) => {
        const kept = await log({ kind: 'folded', about: unit, stepId, repeat, folds })
        if (kept) onKept()
        return kept
      }}
    >
      <h2 className={styles.unseen} {...landing}>
        Folds
      </h2>
    </PadEntry>
  )
}
