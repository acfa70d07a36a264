import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import type { ArchiveColumn, ArchiveTable } from './archive-table.ts'

const text = (name: string, meaning: string): ArchiveColumn => ({
  ...{ name, meaning, unit: '', type: 'text' },
})
const number = (name: string, meaning: string, unit = ''): ArchiveColumn => ({
  ...{ name, meaning, unit, type: 'number' },
})
const whole = (name: string, meaning: string): ArchiveColumn => ({
  ...{ name, meaning, unit: '', type: 'whole number' },
})
const time = (name: string, meaning: string): ArchiveColumn => ({
  ...{ name, meaning, unit: '', type: 'time (UTC)' },
})

const moment = (at: number) => new Date(at).toISOString()

/** The tables of a trial: levels, formula, method, weights, log, ballots, and one row an observation. */
export function archiveTables(trial: WholeTrial, scores: ScoreTable): ArchiveTable[] {
  return [
    levelsTable(trial),
    formulaTable(trial),
    methodTable(trial),
    weightsTable(trial),
    logTable(trial),
    ballotsTable(trial),
    observationsTable(trial, scores),
  ]
}

function levelsTable(trial: WholeTrial): ArchiveTable {
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

function formulaTable(trial: WholeTrial): ArchiveTable {
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

function methodTable(trial: WholeTrial): ArchiveTable {
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

function weightsTable(trial: WholeTrial): ArchiveTable {
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

function logTable(trial: WholeTrial): ArchiveTable {
  const session = new Map(trial.sessions.map(({ id, number: n }) => [id, n]))
  const letter = new Map(
    trial.sessions.flatMap(({ batches }) => batches.map((batch) => [batch.id, batch.letter])),
  )
  const plan = planInForce(trial)
  const nameOf = new Map([
    ...plan.steps.map(({ id, name }) => [id, name] as const),
    ...plan.formula.ingredients.map(({ id, name }) => [id, name] as const),
    ...plan.responses.map(({ id, name }) => [id, name] as const),
  ])
  const events = effectiveEvents(trial.events)
  return {
    file: 'log.csv',
    about: 'an entry of the log that stands; what was taken back or corrected is in trial.json',
    columns: [
      whole('session', 'its number'),
      time('at', 'when'),
      text('about', 'what it is of: trial, session, batch, piece, serving, step, taster or set'),
      text('which', 'the batch’s letter, else its key in trial.json'),
      text('entry', 'the kind of entry'),
      text('of', 'the ingredient, step, reading or response'),
      number('number', 'its number, in the unit of `unit`'),
      text('unit', 'the unit of `number`'),
      text('text', 'what was written'),
    ],
    rows: events.map((event) => {
      const { value, unit, of, said } = entryOf(event as unknown as Record<string, unknown>, nameOf)
      const { kind, id } = event.about
      const which =
        kind === 'batch'
          ? (letter.get(id) ?? id)
          : kind === 'taster'
            ? tasterName(id, trial.kitchen)
            : id
      const number_ = event.sessionId === null ? null : (session.get(event.sessionId) ?? null)
      return [number_, moment(event.at), kind, which, event.kind, of, value, unit, said]
    }),
  }
}

/** The one number of an entry with its unit, what it is of, and its words. */
function entryOf(event: Record<string, unknown>, nameOf: ReadonlyMap<string, string>) {
  const numbers: [string, string][] = [
    ['grams', 'g'],
    ['celsius', '°C'],
    ['percent', '%'],
    ['folds', 'folds'],
    ['value', ''],
  ]
  const found = numbers.find(([key]) => typeof event[key] === 'number')
  const named = ['ingredientId', 'stepId', 'responseId'].map((key) => event[key]).find(Boolean)
  const of =
    typeof named === 'string' ? (nameOf.get(named) ?? named) : String(event.of ?? event.what ?? '')
  const said = [event.text, event.note, event.caption, event.reason].filter(
    (one) => typeof one === 'string' && one !== '',
  )
  return {
    value: found ? Number(event[found[0]]) : null,
    unit: found?.[1] ?? '',
    of,
    said: said.join(' '),
  }
}

function ballotsTable(trial: WholeTrial): ArchiveTable {
  const plan = planInForce(trial)
  const session = new Map(trial.sessions.map(({ id, number: n }) => [id, n]))
  const nameOf = new Map(plan.responses.map(({ id, name }) => [id, name]))
  return {
    file: 'ballots.csv',
    about: 'an answer of a ballot that stands',
    columns: [
      whole('session', 'its number'),
      text('taster', 'initials or code'),
      text('serving', 'the key in trial.json of what it is about'),
      time('at', 'when it was sealed'),
      text('response', 'what was asked'),
      number('value', 'the answer; blank: left out'),
      text('why', 'why it was left out'),
    ],
    rows: effectiveBallots(trial.ballots).flatMap((ballot) =>
      ballot.answers.map(({ responseId, value, why }) => [
        ...[session.get(ballot.sessionId) ?? null, tasterName(ballot.tasterId, trial.kitchen)],
        ...[ballot.about.id, moment(ballot.at), nameOf.get(responseId) ?? responseId, value],
        why ?? '',
      ]),
    ),
  }
}

/** One row for each value of each response: what the findings are computed from. */
function observationsTable(trial: WholeTrial, scores: ScoreTable): ArchiveTable {
  const session = new Map(trial.sessions.map(({ id, number: n }) => [id, n]))
  const flight = new Map(
    trial.sessions.flatMap(({ dealt }) => dealt.flights.map(({ id, number: n }) => [id, n])),
  )
  const lastPart = (key: string) => key.slice(key.lastIndexOf('\u0000') + 1)
  return {
    file: 'observations.csv',
    about: 'one value of one response',
    columns: [
      whole('session', 'its number'),
      whole('flight', 'its number in the session; blank: of no flight'),
      text('batch', 'the key of the dough'),
      text('piece', 'the key of the piece'),
      text('unit', 'what got its level separately: a dough, or all that a session had of a level'),
      text('level', 'the level, in the factor’s unit or by name'),
      text('taster', 'initials or code; blank: the baker'),
      whole('position', 'place in the taster’s order'),
      number('minutes', 'from the oven to the ballot', 'min'),
      text('response', 'what was asked or measured'),
      whole('main', '1 for the main response, else 0'),
      number('value', 'the value'),
    ],
    rows: scores.rows.flatMap((row) =>
      row.values.flatMap((value, at) => {
        if (value === null) return []
        const level = scores.levels[row.level]?.name ?? ''
        const number_ = session.get(row.session) ?? null
        const unit = scores.unit === 'batch' ? row.batch : `${number_} ${level}`
        return [
          [
            ...[
              number_,
              flight.get(lastPart(row.flight)) ?? null,
              row.batch,
              row.piece,
              unit,
              level,
            ],
            row.taster === null ? '' : tasterName(row.taster, trial.kitchen),
            ...[row.position, row.minutes === null ? null : Math.round(row.minutes * 100) / 100],
            ...[scores.responses[at]?.name ?? '', at === 0 ? 1 : 0, value],
          ],
        ]
      }),
    ),
  }
}
