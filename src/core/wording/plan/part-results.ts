import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import { piecesAsked } from '@/core/trial/pieces-asked.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plainMass, scaleStepText } from '@/core/units/mass-text.ts'
import { countText, listText } from '@/core/wording/words/list-text.ts'

/** What stands in each part of a plan, in one line, for its folded row. Degrees are written by `degrees`. */
export function partResults(
  plan: Plan,
  kitchen: readonly KitchenThing[],
  degrees: (celsius: number) => string,
) {
  const { formula, steps, tasters, responses, temperature, plannedSessions, pairsOfHands } = plan
  const scales = thingsOfKind(kitchen, 'scale', plan.kitchenIds)
  const knowing = tasters.filter(({ knows }) => knows).length
  const size = formula.batchSize
  const pieces = piecesAsked(plan).total
  return {
    question: plan.question,
    formula: `${countText(formula.ingredients.length, 'ingredient')}, ${
      size.by === 'flour'
        ? `${plainMass(size.flourGrams)} of flour a dough`
        : `${countText(size.pieces, 'piece')} of ${plainMass(size.pieceGrams)}`
    }`,
    method: countText(steps.length, 'step'),
    water:
      temperature === null
        ? 'not planned'
        : temperature.matched
          ? `matched to each dough, for ${degrees(temperature.wantedDoughCelsius)}`
          : 'one water for all',
    table:
      tasters.length === 0
        ? 'nobody yet'
        : `${countText(tasters.length, 'person', 'people')}, ${
            knowing === 0 ? 'all blind' : `${knowing} knowing which is which`
          }`,
    pieces: `${countText(pieces, 'piece')} a session, ${
      plan.serving === 'rested' ? 'rested' : 'as baked'
    }, ${countText(plan.flights, 'flight')}`,
    responses: countText(responses.length, 'thing recorded', 'things recorded'),
    sessions: `${plannedSessions}, ${countText(pairsOfHands, 'pair')} of hands`,
    kitchen:
      scales.length === 0
        ? 'no scale named'
        : `scales to ${listText(scales.map(({ resolutionGrams }) => scaleStepText(resolutionGrams)))}`,
    detect: `${countText(plannedSessions, 'session')} with ${countText(tasters.length, 'taster')}`,
  }
}
