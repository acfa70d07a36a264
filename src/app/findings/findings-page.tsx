import { useState } from 'react'
import type { Weights } from '@/app/findings/parts/weights.ts'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { useFindings } from '@/app/worker/use-findings.ts'
import { toMend } from '@/core/fairness/in-turn.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { Answered } from './answered.tsx'
import type { Subject } from './subject.ts'

interface FindingsPageProps {
  subject: Subject
  scores: ScoreTable
}

/** What the data support, words first; worked out in a worker while the page stays alive. */
export function FindingsPage({ subject, scores }: FindingsPageProps) {
  const [weights, setWeights] = useState<Weights>(null)
  const found = useFindings(scores, subject.seed, weights, toMend(subject.fairness))
  if (found.state === 'working')
    return <Progress label="Working out what the data support" done={null} />
  if (found.state === 'failed')
    return (
      <ErrorNote title="The findings could not be worked out">
        {found.error.message}. What was recorded is untouched; reload the page, and report it as a
        bug if it comes again.
      </ErrorNote>
    )
  return (
    <Answered subject={subject} answer={found.answer} weights={weights} onWeights={setWeights} />
  )
}
