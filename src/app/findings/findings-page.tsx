import { type ReactNode, useState } from 'react'
import { NotWorkedOut } from '@/app/kit/page/not-worked-out.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import type { FindingsOf } from '@/app/worker/compute-findings.ts'
import { useFindings } from '@/app/worker/use-findings.ts'
import { FindingsSections } from './findings-sections.tsx'
import type { FindingsSource } from './findings-source.ts'
import type { Weights } from './parts/trade-off-part.tsx'

interface FindingsPageProps {
  source: FindingsSource
  /** What is asked; the same object as long as it is the same question. */
  of: FindingsOf
  /** What stands here while there is nothing to find in. */
  nothing: ReactNode
}

/** What the data support, words first; worked out in a worker while the page stays alive. */
export function FindingsPage({ source, of, nothing }: FindingsPageProps) {
  const [weights, setWeights] = useState<Weights>(null)
  const found = useFindings(of, weights)
  if (found.state === 'working')
    return <Progress label="Working out what the data support" done={null} />
  if (found.state === 'failed')
    return <NotWorkedOut title="The findings could not be worked out" error={found.error} />
  if (found.answer === null) return nothing
  return (
    <FindingsSections
      source={source}
      answer={found.answer}
      weights={weights}
      onWeights={setWeights}
    />
  )
}
