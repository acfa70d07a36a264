import { useLiveQuery } from 'dexie-react-hooks'
import { useServices } from '@/app/services/services.ts'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { hostOfTexts } from '@/slip/kept-host.ts'
import type { HostOfSlips } from '@/slip/take-return.ts'
import { giveOut, slipsKey } from '@/slip-host/give-out.ts'

export interface SlipsOfSession {
  /** Null until the first slip is given out. */
  host: HostOfSlips | null
  /** The link that carries a taster's ballot (null: everybody's), given out now if it was not before. */
  handOut: (tasterId: string | null) => Promise<string>
}

/** The slips of the session at the table, kept on this device alone: nothing of them is in the trial's file. */
export function useSlips(): SlipsOfSession | undefined {
  const { notebook, now, newSeed } = useServices()
  const { whole, session } = useTable()
  const key = slipsKey(session.id)
  const texts = useLiveQuery(async () => (await notebook.draft(key)) ?? {}, [notebook, key])
  if (!texts) return undefined
  const handOut = async (tasterId: string | null) => {
    const given = { notebook, now: now(), draw: newSeed }
    const text = await giveOut(given, whole, session.id, tasterId)
    return `${location.origin}${location.pathname}#/slip/${text}`
  }
  return { host: hostOfTexts(texts), handOut }
}
