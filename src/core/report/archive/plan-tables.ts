import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { number, text, whole } from './archive-columns.ts'
import type { ArchiveTable } from './archive-table.ts'

/** The levels of the plan in force. */
export function levelsTable(trial: WholeTrial): ArchiveTable {
  const { levels, factor } = planInForce(trial)
  return {
    file: 'levels.csv',
    about: 'a level of the factor',
    columns: [
      text('level', 'its name'),
      number('value', 'its value', factor.unitOfMeasure),
      whole('usual', '1 where it is the baker’s usual, else 0'),
    ],
    rows: levels.map(({ label, value, control }) => [label, value, control ? 1 : 0]),
  }
}

/** The formula of the plan in force, a row an ingredient. */
export function formulaTable(trial: WholeTrial): ArchiveTable {
  const { ingredients, preferments } = planInForce(trial).formula
  const ahead = (id: string) =>
    preferments.reduce((sum, { flourSharePercent, parts }) => {
      const part = parts.find(({ ingredientId }) => ingredientId === id)
      return sum + (part ? (flourSharePercent * part.percent) / 100 : 0)
    }, 0)
  return {
    file: 'formula.csv',
    about: 'an ingredient of the plan’s formula',
    columns: [
      text('ingredient', 'its name'),
      text('kind', 'flour, water, liquid, salt, yeast, fat or other'),
      number('percent', 'of all flour, preferments counted in', '% of flour'),
      number('percent_in_preferments', 'of that, what ferments or soaks ahead', '% of flour'),
    ],
    rows: ingredients.map(({ id, name, kind, percent }) => [name, kind, percent, ahead(id)]),
  }
}

/** The method of the plan in force, a row a step. */
export function methodTable(trial: WholeTrial): ArchiveTable {
  return {
    file: 'method.csv',
    about: 'a step of the method',
    columns: [
      whole('step', 'its place'),
      text('name', 'its name'),
      text('kind', 'its kind'),
      whole('repeats', 'how often it is done'),
      number('hands', 'work each time', 's'),
      number('wait', 'wait after each time', 's'),
      text('ends_by', 'clock, mark or reading'),
      number('celsius', 'its temperature', '°C'),
    ],
    rows: planInForce(trial).steps.map((step, at) => [
      ...[at + 1, step.name, step.kind, step.repeats, step.handsSeconds, step.waitSeconds],
      ...[step.endsBy.by, step.celsius ?? null],
    ]),
  }
}

/** What was to be weighed, a row a reading of a scale. */
export function weightsTable(trial: WholeTrial): ArchiveTable {
  const plan = planInForce(trial)
  const sheet = weighSheet(plan, trial.kitchen)
  const rows = sheet.batches.flatMap((batch) =>
    batch.lines.map((line) => [
      ...[batch.label, line.name, line.into, line.targetGrams, line.grams],
      line.resolutionGrams,
    ]),
  )
  return {
    file: 'weights.csv',
    about:
      'a weight of the plan’s weigh sheet; what was read from the scale stands in log.csv as weighed',
    columns: [
      text('level', 'the dough it is for; blank: one dough for all'),
      text('ingredient', 'what is weighed'),
      text('into', 'preferment or dough'),
      number('target', 'the weight asked for', 'g'),
      number('shown', 'what the scale is to show', 'g'),
      number('step', 'the step of that scale; blank without one', 'g'),
    ],
    rows,
  }
}
