import type { HouseChange } from '@/core/house/changed-house.ts'
import type { HouseCard } from '@/core/house/house-card.ts'
import type { HouseRevision, RestsOn, Yield } from '@/core/house/house-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { massText, plainMass } from '@/core/units/mass-text.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { endsWords } from '@/core/wording/plan/ends-by-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { asSentenceStart, countText, listText } from '@/core/wording/words/list-text.ts'

/** What is made, as a sentence's parts: "6 pieces of 280 g", "2 pans of 30 × 40 cm, 840 g each", "1000 g of flour". */
export function yieldText(made: Yield, pieceGrams: number | null): string {
  const each = pieceGrams === null ? '' : massText(pieceGrams, 0)
  switch (made.by) {
    case 'flour':
      return `${plainMass(Math.round(made.flourGrams * 10) / 10)} of flour`
    case 'pieces':
      return `${countText(made.pieces, 'piece')} of ${each}`
    case 'tins':
      return made.tin.is === 'volume'
        ? `${countText(made.pieces, 'tin')} of ${plainNumber(made.tin.millilitres)} ml, ${each} in each`
        : `${countText(made.pieces, 'tin')}, ${each} in each`
    case 'pans': {
      const { pan } = made
      const size =
        pan.is === 'circle'
          ? `${plainNumber(pan.diameter)} cm across`
          : pan.is === 'area'
            ? `${plainNumber(pan.squareCentimetres)} cm²`
            : `${plainNumber(pan.length)} × ${plainNumber(pan.width)} cm`
      return `${countText(made.pieces, 'pan')} of ${size}, ${each} each`
    }
  }
}

/** The whole dough of a card: "Dough, 70 % water in all". */
export function doughLineText({ hydrationPercent }: Pick<HouseCard, 'hydrationPercent'>): string {
  return hydrationPercent === null || hydrationPercent === 0
    ? 'Dough'
    : `Dough, ${plainNumber(Math.round(hydrationPercent * 10) / 10)} % water in all`
}

/** One step of the method in a line: "Fold 3 times, 30 min apart", "Proof 1 h, until risen by 80 %". */
export function methodLine(step: Step, degrees: (celsius: number) => string): string {
  const ends = endsWords(step, degrees)
  const at = step.celsius === undefined ? '' : ` at ${degrees(step.celsius)}`
  const wait = step.waitSeconds > 0 ? durationText(step.waitSeconds) : ''
  const times = step.repeats > 1 ? ` ${step.repeats} times` : ''
  if (ends !== '')
    return `${step.name}${times}${at} ${ends}${wait === '' ? '' : `, about ${wait}`}.`
  if (wait === '') return `${step.name}${times}${at}.`
  return step.repeats > 1
    ? `${step.name}${times}${at}, ${wait} apart.`
    : `${step.name}${at}, ${wait}.`
}

const because: Record<RestsOn['because'], string> = {
  easiest: 'the easiest that is as good as the best',
  picked: 'the baker’s own pick',
  usual: 'nothing was settled, so the usual stays',
}

/** How surely: "3 sessions, 8 tasters; 70 %, the easiest that is as good as the best." */
export function restsOnText({ sessions, tasters, level, because: why }: RestsOn): string {
  const tasted =
    sessions === 0
      ? 'not yet tasted'
      : `${countText(sessions, 'session')}, ${countText(tasters, 'taster')}`
  return `${asSentenceStart(tasted)}: ${level}, ${because[why]}.`
}

/** What a house formula cannot promise. */
export const houseCaution =
  'It holds for these tasters and this flour: another flour may drink more or less. Hot ovens burn, raw flour and dough are not to be tasted; ask about allergies before serving. Local food-safety rules and the instructions of the equipment come first.'

const changes: Record<HouseChange, string> = {
  formula: 'the formula',
  method: 'the method',
  temperature: 'the temperatures',
  yield: 'the yield',
  'rests-on': 'what it rests on',
  note: 'the note',
}

/** What a revision changed: "Changed: the formula and the yield." */
export function houseChangesText(
  changed: readonly HouseChange[],
  revision: Pick<HouseRevision, 'note'>,
): string {
  const said =
    changed.length === 0
      ? 'First kept.'
      : `Changed: ${listText(changed.map((one) => changes[one]))}.`
  return revision.note === '' ? said : `${said} ${revision.note}`
}
