import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { moment, number, text, time, whole } from './archive-columns.ts'
import type { ArchiveTable } from './archive-table.ts'

/** The log as it stands, a row an entry. */
export function logTable(trial: WholeTrial): ArchiveTable {
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

/** The ballots that count, a row an answer. */
export function ballotsTable(trial: WholeTrial): ArchiveTable {
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
/** What the findings read, a row an observation. */
export function observationsTable(trial: WholeTrial, scores: ScoreTable): ArchiveTable {
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
