import { useState } from 'react'
import type { Draft } from '@/app/kit/field/use-draft.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { unitsOfForm } from './fields-in-units.ts'
import { typedFrom } from './kitchen-entry.ts'
import { kitchenChapters } from './kitchen-fields.ts'

type Values = Record<string, string>

/** An entry that was left half filled when another was opened, or on purpose: it can be had back. */
export function useSetAside(draft: Draft, kitchen: readonly KitchenThing[]) {
  const [aside, setAside] = useState<Values | null>(null)
  const keepAside = () => setAside(wasFilled(draft.values, kitchen) ? draft.values : null)
  return {
    aside,
    /** What the entry is of, such as “a scale”. */
    what: kitchenChapters.find(({ kind }) => kind === aside?.formKind)?.one ?? '',
    open: (values: Values) => {
      keepAside()
      draft.setAll(values)
    },
    leave: () => {
      keepAside()
      draft.clear()
    },
    haveBack: () => {
      if (aside) draft.setAll(aside)
      setAside(null)
    },
    forget: () => setAside(null),
  }
}

/** Whether something was typed into the open entry that is not in the kitchen already. */
function wasFilled(values: Values, kitchen: readonly KitchenThing[]): boolean {
  const { formKind, formId, formUnit, formMass, ...typed } = values
  const chapter = kitchenChapters.find(({ kind }) => kind === formKind)
  if (!chapter) return false
  const thing = kitchen.find(({ id }) => id === formId)
  const units = unitsOfForm({ formUnit, formMass })
  const before: Values = thing ? { ...typedFrom(chapter, thing, units) } : {}
  return Object.entries(typed).some(([key, text]) => text.trim() !== (before[key] ?? ''))
}
