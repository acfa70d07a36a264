import type { TableServices } from './services.ts'
import type { OwnTable, PlanSeat } from './table-store.ts'

/** The device that the plan is changed on, where it is not this one: a login that was taken back holds it no more. */
export function planHolder({ planSeats, invited }: OwnTable): PlanSeat | null {
  const last = planSeats?.at(-1)
  if (!last || last.takenBackAt !== null) return null
  const login = invited.find((each) => each.login.name === last.login)
  return login && login.revokedAt === null ? last : null
}

/** Whether a change of the plan is taken from a device: from the one that holds it, and what comes late from one that held it. */
export const mayHaveChanged = ({ planSeats }: OwnTable, login: string, seat: string): boolean =>
  planSeats?.some((each) => each.login === login && each.seat === seat) ?? false

/** Hands the plan to a device at the table: from now on it is changed there alone. */
export async function handPlan(
  { store, now }: Pick<TableServices, 'store' | 'now'>,
  trialId: string,
  { login, seat }: Pick<PlanSeat, 'login' | 'seat'>,
): Promise<void> {
  await store.own
    .where('trialId')
    .equals(trialId)
    .modify((own) => {
      const holder = planHolder(own)
      if (holder?.login === login && holder.seat === seat) return
      own.planSeats = [...takenBack(own, now()), { login, seat, takenBackAt: null }]
    })
}

/** From now on the plan is changed on this device again. What still comes from the other is joined to it, field by field. */
export async function takePlanBack(
  { store, now }: Pick<TableServices, 'store' | 'now'>,
  trialId: string,
): Promise<void> {
  await store.own
    .where('trialId')
    .equals(trialId)
    .modify((own) => {
      own.planSeats = takenBack(own, now())
    })
}

const takenBack = ({ planSeats = [] }: OwnTable, at: number): PlanSeat[] =>
  planSeats.map((each) => ({ ...each, takenBackAt: each.takenBackAt ?? at }))
