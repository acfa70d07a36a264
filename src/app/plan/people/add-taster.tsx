import { NewTaster } from '@/app/kit/field/new-taster.tsx'
import { usePlanPage, usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import { useServices } from '@/app/services/services.ts'
import { withTaster } from '@/core/plan-edits/people/tasters.ts'

/** A new taster, kept in the kitchen and taken into this plan at once. */
export function AddTaster() {
  const { notebook, newId } = useServices()
  const store = usePlanStore()
  const kitchen = usePlanPage((page) => page.kitchen)
  const add = async (initials: string) => {
    const id = newId()
    await notebook.keepKitchenThing({ id, kind: 'taster', initials })
    store.getState().change((plan) => withTaster(plan, id, 'blind'))
  }
  return <NewTaster kitchen={kitchen} press="Add taster" onAdd={add} />
}
