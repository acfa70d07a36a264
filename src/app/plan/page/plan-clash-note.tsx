import { Toast } from '@/app/kit/page/toast.tsx'
import { clashText } from '@/core/wording/plan/clash-text.ts'
import { usePlanPage, usePlanStore } from './plan-page-context.ts'

/** An hour: what the other window wrote is to be chosen or left, not to be missed. */
const clashSeconds = 3600

/** What another window changed at the same time, at the foot, in sight wherever on the page the change was made. */
export function PlanClashNote() {
  const store = usePlanStore()
  const clash = usePlanPage((page) => page.clash)
  if (clash === null) return null
  return (
    <Toast
      message={clashText(clash.paths, clash.here, clash.other)}
      undoLabel="Take the other"
      onUndo={store.getState().takeOther}
      onClose={store.getState().dropClash}
      seconds={clashSeconds}
    />
  )
}
