import type { Departure } from '@/core/session/departure.ts'
import type { Unit } from '@/core/session/line.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { massText } from '@/core/units/mass-text.ts'
import { signedText } from '@/core/units/number-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import { ingredientName, stepName } from '@/core/wording/words/named-in-plan.ts'
import { unitLetter } from '@/core/wording/words/unit-name.ts'
import { stepText } from './event-text.ts'

/**
 * Something done differently from the plan, in one sentence with its size. A piece goes by the letter of its level's line, so
 * that the pieces of one dough can be told apart; `levels` names the level as well, for where nothing is sealed.
 */
export function departureText(
  departure: Departure,
  plan: Plan,
  session: Session,
  { levels = false }: { levels?: boolean } = {},
): string {
  const line = (unit: Unit, levelId: string | null) => {
    const { letter, which } = unitLetter(session, unit)
    const level = levels ? plan.levels.find(({ id }) => id === levelId) : undefined
    const beside = [level ? levelText(level, plan.factor.unitOfMeasure) : '', which].filter(Boolean)
    return beside.length === 0 ? letter : `${letter} (${beside.join(', ')})`
  }
  const batch = ({ batchId, levelId }: { batchId: string; levelId: string | null }) =>
    line({ kind: 'batch', id: batchId }, levelId)
  switch (departure.what) {
    case 'dough-order':
      return `${stepName(plan, departure.stepId)}: the doughs were taken in another order (${countText(departure.swaps, 'swap')}).`
    case 'bake-order':
      return `The pieces were baked in another order (${countText(departure.swaps, 'swap')}).`
    case 'wait': {
      const off = departure.doneSeconds - departure.plannedSeconds
      return `${line(departure.unit, departure.levelId)}: ${stepText(plan, departure.stepId, departure.repeat)} took ${durationText(departure.doneSeconds)}, ${durationText(Math.abs(off))} ${off > 0 ? 'longer' : 'shorter'} than planned.`
    }
    case 'weight':
      return `${batch(departure)}: ${massText(departure.doneGrams, 1)} of ${ingredientName(plan, departure.ingredientId)} instead of ${massText(departure.plannedGrams, 1)} (${signedText(departure.offPercent, 1)} %).`
    case 'step-missing':
      return `${line(departure.unit, departure.levelId)}: ${stepText(plan, departure.stepId, departure.repeat)} was skipped.`
    case 'step-extra':
      return `${line(departure.unit, levelOf(session, departure.unit))}: ${stepName(plan, departure.stepId)} was done ${countText(departure.repeat, 'time')}, planned ${departure.planned}.`
  }
}

function levelOf({ batches, pieces }: Session, { kind, id }: Unit): string | null {
  return (kind === 'batch' ? batches : pieces).find((one) => one.id === id)?.levelId ?? null
}
