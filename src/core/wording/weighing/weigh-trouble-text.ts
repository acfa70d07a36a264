import type { Plan } from '@/core/trial/plan-record.ts'
import { massText, plainMass } from '@/core/units/mass-text.ts'
import type { SheetTrouble } from '@/core/weighing/sheet-troubles.ts'
import type { WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import { countText, listText } from '@/core/wording/words/list-text.ts'
import { belowScaleText, coarseText, mixName } from './weighing-text.ts'

type Named = Pick<Plan, 'formula'>

/** What the scales of a weigh sheet cannot weigh at once, or only badly, each with its mend; nothing where they can. */
export function sheetTroubleTexts(
  { troubles, scales }: Pick<WeighSheet, 'troubles' | 'scales'>,
  plan: Named,
): string[] {
  const tooMuch = troubles.filter(({ trouble }) => trouble === 'over-capacity')
  return [
    ...scales.flatMap((scale) => {
      const goes = goesText(
        tooMuch.filter(({ scaleId }) => scaleId === scale.id),
        plan,
      )
      const most = plainMass(scale.capacityGrams)
      return goes === ''
        ? []
        : [
            `No scale here holds so much: on ${scale.name}, which holds ${most}, weigh ${goes}. Choose a scale that holds more to weigh it at once.`,
          ]
    }),
    ...troubles.flatMap((one) => {
      if (one.trouble === 'over-capacity') return []
      const name = nameOf(one, plan)
      if (one.trouble === 'below-zero')
        return `${name}: ${massText(one.targetGrams, 2)} cannot be weighed: stock, dry mix or preferment bring more of it than the dough takes. Make them stronger, or take less of them.`
      const found =
        one.trouble === 'below-scale'
          ? belowScaleText(name, one.targetGrams)
          : coarseText(name, one.targetGrams, one.relativeUncertainty)
      return `${found} Use a finer scale or make larger batches.`
    }),
  ]
}

/** "flour and water in two goes each, rye in three goes": the fewest goes first. */
function goesText(tooMuch: readonly SheetTrouble[], plan: Named): string {
  const counts = [...new Set(tooMuch.map(({ goes }) => goes))].toSorted((a, b) => a - b)
  return counts
    .map((count) => {
      const names = tooMuch.filter(({ goes }) => goes === count).map((one) => nameOf(one, plan))
      return `${listText(names)} in ${countText(count, 'go', 'goes')}${names.length > 1 ? ' each' : ''}`
    })
    .join(', ')
}

function nameOf({ name, into }: SheetTrouble, { formula }: Named): string {
  if (into === null) return name
  if ('dose' in into) return `${name} for the ${mixName(into.dose)}`
  const preferment = formula.preferments.find(({ id }) => id === into.prefermentId)
  return preferment ? `${name} for the ${preferment.name}` : name
}
