import type { KitchenKind, KitchenThing } from './kitchen-record.ts'

type ThingOf<Kind extends KitchenKind> = Extract<KitchenThing, { kind: Kind }>

/**
 * The kitchen's things of one kind, in the kitchen's order; with `ids` (such as a plan's `kitchenIds`) only those named.
 */
export function thingsOfKind<Kind extends KitchenKind>(
  kitchen: readonly KitchenThing[],
  kind: Kind,
  ids?: readonly string[],
): ThingOf<Kind>[] {
  const isOfKind = (thing: KitchenThing): thing is ThingOf<Kind> => thing.kind === kind
  return kitchen.filter(isOfKind).filter(({ id }) => ids === undefined || ids.includes(id))
}
