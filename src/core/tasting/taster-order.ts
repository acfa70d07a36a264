import type { Serving, Session } from '@/core/session/session-record.ts'

/**
 * The servings of one taster in the order they are offered; index + 1 is the position. A taster who joined after the deal
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
