import { batchIdOf } from '@/app/bench/batch-id-of.ts'
import { useBench } from '@/app/bench/bench-context.ts'
import { useBenchSheet } from '@/app/bench/cups/use-bench-sheet.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { type EntryKind, entryKeys } from '@/core/session/press/entry-kinds.ts'
import { toWeigh } from '@/core/session/press/to-weigh.ts'
import { isTyped } from './answers-entry.tsx'
import type { BenchUnit } from './entry-props.ts'

/** The entries that make sense now for the dough or piece in front. */
export function useEntryKeys(item: AgendaItem | null, unit: BenchUnit): EntryKind[] {
  const { session, plan, events } = useBench()
  const sheet = useBenchSheet()
  const batchId = batchIdOf(session, unit)
  const levelId = session.batches.find(({ id }) => id === batchId)?.levelId ?? null
  const lines = toWeigh(sheet, levelId, batchId, events).filter(({ loggedAs }) => loggedAs !== null)
  const dividing = plan.steps.filter(({ kind }) => kind === 'divide').map(({ id }) => id)
  return entryKeys({
    unit: unit.kind,
    step: item?.step.kind ?? null,
    toWeigh: lines.length,
    weighed: lines.filter(({ logged }) => logged !== null).length,
    divided: events.some(
      (event) =>
        event.kind === 'step-started' &&
        event.about.id === batchId &&
        dividing.includes(event.stepId),
    ),
    asked: plan.responses.some(
      (response) => response.by === 'baker' && response.about === unit.kind && isTyped(response),
    ),
  })
}
