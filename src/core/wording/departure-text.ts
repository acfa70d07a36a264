import type { Departure } from '@/core/session/departures.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { durationText } from './duration-text.ts'
import { stepText } from './event-text.ts'
import { countText } from './list-text.ts'
import { ingredientName, stepName } from './named-in-plan.ts'
import { decimalText, signedText } from './number-text.ts'

/** Something done differently from the plan, in one sentence with its size. */
export function departureText(departure: Departure, plan: Plan, session: Session): string {
  const line = (batchId: string) =>
    session.batches.find(({ id }) => id === batchId)?.letter ?? 'A batch'
  const unitLine = (unit: { kind: 'batch' | 'piece'; id: string }) =>
    unit.kind === 'batch'
      ? line(unit.id)
      : line(session.pieces.find(({ id }) => id === unit.id)?.batchId ?? '')
  switch (departure.what) {
    case 'dough-order':
      return `${stepName(plan, departure.stepId)}: the doughs were taken in another order (${countText(departure.swaps, 'swap')}).`
    case 'bake-order':
      return `The pieces were baked in another order (${countText(departure.swaps, 'swap')}).`
    case 'wait': {
      const off = departure.doneSeconds - departure.plannedSeconds
      return `${line(departure.batchId)}: ${stepText(plan, departure.stepId, departure.repeat)} took ${durationText(departure.doneSeconds)}, ${durationText(Math.abs(off))} ${off > 0 ? 'longer' : 'shorter'} than planned.`
    }
    case 'weight':
      return `${line(departure.batchId)}: ${decimalText(departure.doneGrams, 1)} g of ${ingredientName(plan, departure.ingredientId)} instead of ${decimalText(departure.plannedGrams, 1)} g (${signedText(departure.offPercent, 1)} %).`
    case 'step-missing':
      return `${line(departure.batchId)}: ${stepText(plan, departure.stepId, departure.repeat)} was passed over.`
    case 'step-extra':
      return `${unitLine(departure.unit)}: ${stepName(plan, departure.stepId)} was done ${countText(departure.repeat, 'time')}, planned ${departure.planned}.`
  }
}
