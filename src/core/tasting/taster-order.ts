import type { Serving, Session } from '@/core/session/session-record.ts'
import type { Ballot } from './ballot-record.ts'

/**
 * The servings of one taster in the order they were dealt. A taster who joined after the deal
 * takes over the order of a dealt one, the late ones in turn, since printed codes are never dealt again. Empty when the
 * session was dealt for nobody.
 */
export function tasterOrder(
  session: Session,
  tasterId: string,
  lateTasterIds: readonly string[] = [],
): Serving[] {
  const { tasterOrders, servings } = session.dealt
  const own = tasterOrders.find((order) => order.tasterId === tasterId)
  const late = Math.max(0, lateTasterIds.indexOf(tasterId))
  const order = own ?? tasterOrders[late % Math.max(1, tasterOrders.length)]
  const byId = new Map(servings.map((serving) => [serving.id, serving]))
  return (order?.servingIds ?? []).flatMap((id) => byId.get(id) ?? [])
}

/**
 * Of a taster's order what really comes to them: counted servings whose piece did not fail, as they were dealt. As baked they come
 * in the order that the oven gives them: `asTheyCome`. Index + 1 is the position.
 */
export function servedInOrder(order: readonly Serving[], lost: ReadonlySet<string>): Serving[] {
  return order.filter(({ flightId, pieceId }) => flightId !== null && !lost.has(pieceId))
}

/**
 * The same with each serving in the place at which its taster's own phone says that it was tasted (`ballots` are theirs); those
 * of which nothing is said stand round them in their order.
 */
export function asTasted(
  came: readonly Serving[],
  ballots: readonly Pick<Ballot, 'about' | 'position'>[],
): Serving[] {
  const placeOf = new Map(
    ballots.flatMap(({ about, position }) =>
      about.kind === 'serving' && position !== undefined ? [[about.id, position - 1]] : [],
    ),
  )
  const order = came.filter(({ id }) => !placeOf.has(id))
  const said = came.flatMap((serving) => {
    const place = placeOf.get(serving.id)
    return place === undefined ? [] : [{ serving, place }]
  })
  for (const { serving, place } of said.toSorted((one, other) => one.place - other.place))
    order.splice(place, 0, serving)
  return order
}
