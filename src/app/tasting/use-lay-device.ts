import { useEffect } from 'react'
import { useUncoveredTrial } from '@/app/kit/page/uncovered-trial.ts'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import { useTableDevice } from '@/app/services/table-device.ts'
import type { Seal } from '@/core/seal/sealed.ts'

/**
 * Lays the device at the table while codes are kept here or a taster sits at it: its baker's look ends and every other way is
 * closed. When the tasting is over the device is free again.
 */
export function useLayDevice(trialId: string, seal: Seal | undefined, seated: boolean): void {
  const { cover } = useUncoveredTrial()
  const { lay, take } = useTableDevice()
  const watch = useThrown()
  const laid = seal === 'sealed' || (seal === 'not-begun' && seated)
  useEffect(() => {
    if (laid) cover()
    watch(laid ? lay(trialId) : take())
  }, [laid, trialId, cover, lay, take, watch])
}
