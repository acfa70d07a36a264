import { useLiveQuery } from 'dexie-react-hooks'
import type { Notebook } from '@/notebook/notebook.ts'
import { useServices } from './services.ts'

/** Where it is kept that this device has to do with open tables, so that whoever has not need not load what works them. */
const key = 'open-tables'

export interface OpenTables {
  /** Trials whose table this device opened. */
  own: ReadonlySet<string>
  /** Of these, the ones whose plan was handed to another device. */
  planAway: ReadonlySet<string>
  /** Tables that this device has a part at. */
  joined: readonly string[]
  /** By trial, the table at which this device helps with it. */
  helps: ReadonlyMap<string, string>
  /** Trials whose plan was handed to this device. */
  planHere: ReadonlySet<string>
}

const none: OpenTables = {
  ...{ own: new Set(), planAway: new Set(), joined: [] },
  ...{ helps: new Map(), planHere: new Set() },
}

const under = (kept: Readonly<Record<string, string>>, what: string): [string, string][] =>
  Object.entries(kept).flatMap(([name, value]) =>
    name.startsWith(what) ? [[name.slice(what.length), value]] : [],
  )

/** What this device has to do with open tables; undefined until that is read. */
export function useOpenTables(): OpenTables | undefined {
  const { notebook } = useServices()
  const kept = useLiveQuery(async () => (await notebook.draft(key)) ?? {}, [notebook])
  if (!kept) return undefined
  if (Object.keys(kept).length === 0) return none
  return {
    own: new Set(under(kept, 'own/').map(([trialId]) => trialId)),
    planAway: new Set(under(kept, 'own/').flatMap(([trialId, at]) => (at === '' ? [] : [trialId]))),
    joined: under(kept, 'joined/').map(([table]) => table),
    helps: new Map(under(kept, 'helps/')),
    planHere: new Set(under(kept, 'plan/').map(([trialId]) => trialId)),
  }
}

export type OpenTableMark = `${'own' | 'joined' | 'helps' | 'plan'}/${string}`

/** Keeps a mark, or takes it away (`value` null). Of an own table it says where the plan is: empty where it is here. */
export async function markOpenTable(
  notebook: Notebook,
  mark: OpenTableMark,
  value: string | null,
): Promise<void> {
  const { [mark]: before, ...others } = (await notebook.draft(key)) ?? {}
  if (before === (value ?? undefined)) return
  const next = value === null ? others : { ...others, [mark]: value }
  if (Object.keys(next).length === 0) await notebook.dropDraft(key)
  else await notebook.keepDraft(key, next)
}
