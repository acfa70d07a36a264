import type { Plan } from '@/core/trial/plan-record.ts'
import { stampsOf } from './bakes.ts'
import type { Standing } from './effective-events.ts'
import type { Serving } from './session-record.ts'

/**
 * Servings in the order in which they come to the table. Rested ones come as they were dealt. Those served as baked come as the
 * oven gave them, whatever was drawn: what was served as it was served, then what is out of the oven, then what is in it, each
 * the earliest first; what is not launched yet comes last, as it was drawn (own rule).
 */
export function asTheyCome<Coming extends Pick<Serving, 'id' | 'pieceId'>>(
  servings: readonly Coming[],
  { serving }: Pick<Plan, 'serving'>,
  events: readonly Standing[],
): readonly Coming[] {
  if (serving !== 'as-baked') return servings
  const served = new Map(
    events.flatMap((event) => (event.kind === 'served' ? [[event.about.id, event.at]] : [])),
  )
  const out = stampsOf(events, 'bake-out')
  const launched = stampsOf(events, 'bake-in')
  const stamps = ({ id, pieceId }: Coming) => [
    served.get(id) ?? Infinity,
    out.get(pieceId) ?? Infinity,
    launched.get(pieceId) ?? Infinity,
  ]
  return servings.toSorted((one, other) => {
    const [mine, theirs] = [stamps(one), stamps(other)]
    const at = mine.findIndex((stamp, index) => stamp !== theirs[index])
    return at < 0 ? 0 : (mine[at] ?? 0) < (theirs[at] ?? 0) ? -1 : 1
  })
}

/** The same when the day is over: then a piece without stamps was not left out but forgotten in the log, and keeps the place it was dealt. */
export function asTheyCame<Coming extends Pick<Serving, 'id' | 'pieceId'>>(
  servings: readonly Coming[],
  plan: Pick<Plan, 'serving'>,
  events: readonly Standing[],
): readonly Coming[] {
  const logged = new Set([
    ...stampsOf(events, 'bake-in').keys(),
    ...stampsOf(events, 'bake-out').keys(),
  ])
  const known = servings.filter(({ pieceId }) => logged.has(pieceId))
  const came = asTheyCome(known, plan, events)
  return servings.map((each) => came[known.indexOf(each)] ?? each)
}
