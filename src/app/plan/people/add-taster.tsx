import { NewTaster } from '@/app/kit/field/new-taster.tsx'
import { usePlanPage, usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import { useServices } from '@/app/services/services.ts'

/** A new taster, kept in the kitchen and taken into this plan at once. */
export function AddTaster() {
  const { notebook, newId } = useServices()
  const store = usePlanStore()
  const kitchen = usePlanPage((page) => page.kitchen)
  const add = async (initials: string) => {
    const id = newId()
    await notebook.keepKitchenThing({ id, kind: 'taster', initials })
    store.getState().change((plan) => ({
      ...plan,
      tasters: [...plan.tasters, { tasterId: id, knows: false }],
    }))
  }
  return <NewTaster kitchen={kitchen} press="Add taster" onAdd={add} />
}
