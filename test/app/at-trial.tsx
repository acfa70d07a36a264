import type { ReactNode } from 'react'
import { WholeTrialProvider } from '@/app/services/whole-trial-provider.tsx'

/** A place of a trial as it stands in the frame: below the one reading of its trial. */
export function AtTrial({ trialId, children }: { trialId: string; children: ReactNode }) {
  return (
    <WholeTrialProvider trialId={trialId} waiting={null} missing={<p>There is no such trial.</p>}>
      {children}
    </WholeTrialProvider>
  )
}
