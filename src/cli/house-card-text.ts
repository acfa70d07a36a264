import type { HouseCard } from '@/core/house/house-card.ts'
import { type House, houseInForce } from '@/core/house/house-record.ts'
import { massUnit, roundedMass, weightFigure } from '@/core/units/mass-text.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { degreesWithSign, plainDegrees } from '@/core/units/temperature-text.ts'
import {
  doughLineText,
  houseCaution,
  methodLine,
  restsOnText,
  yieldText,
} from '@/core/wording/house/house-text.ts'
import { textTable } from './text-table.ts'
import { wrapped } from './wrapped.ts'

/** The card of a house formula for the terminal: yield, weights in the order of work, water, method, what it rests on. */
export function houseCardText(house: House, card: HouseCard, bake: string): string {
  const revision = houseInForce(house)
  const rows = card.parts.flatMap(({ preferment, lines }) => [
    ...(card.parts.length > 1 ? [[preferment ?? 'Dough', '', '']] : []),
    ...lines.map((line) => [
      line.name,
      line.percent === null ? '' : plainNumber(Math.round(line.percent * 100) / 100),
      weightFigure(line.grams, line.resolutionGrams),
    ]),
  ])
  const water = card.water?.batches[0]
  const waterLine =
    card.water && water
      ? [
          `Water at ${degreesWithSign(water.waterCelsius, 1)}, for dough of ${degreesWithSign(card.water.wantedDoughCelsius, 1)}.`,
        ]
      : []
  const method = revision.steps.map((step, at) => `${at + 1}. ${methodLine(step, plainDegrees)}`)
  return [
    house.name,
    ...(bake === '' ? [] : [wrapped(bake)]),
    `For ${yieldText(revision.yield, card.pieceGrams)}.`,
    textTable(
      ['', '%', massUnit()],
      [...rows, [doughLineText(card), '', roundedMass(card.doughGrams, 0)]],
      [false, true, true],
    ),
    ...waterLine,
    method.join('\n'),
    ...revision.restsOn.map((one) => wrapped(`Rests on “${one.question}” ${restsOnText(one)}`)),
    wrapped(houseCaution),
  ].join('\n\n')
}
