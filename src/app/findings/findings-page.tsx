import { useState } from 'react'
import { ErrorNote } from '@/app/kit/error-note.tsx'
import { Progress } from '@/app/kit/progress.tsx'
import { Section } from '@/app/kit/section.tsx'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { useFindings } from '@/app/worker/use-findings.ts'
import type { ScoreTable } from '@/core/findings/score-table.ts'
import { lettersByName } from '@/core/report/letters-of.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { restsOn } from '@/core/wording/rests-on.ts'
import { verdictSentence } from '@/core/wording/verdict-sentence.ts'
import { AlsoSeen } from './also-seen.tsx'
import { CarryOn } from './carry-on.tsx'
import { Easiest } from './easiest.tsx'
import styles from './findings.module.css'
import { Ladder } from './ladder.tsx'
import { Method } from './method.tsx'
import { PairsPart } from './pairs-part.tsx'
import { ResponsePart } from './response-part.tsx'
import { Saying } from './saying.tsx'
import { TasterPart } from './taster-part.tsx'
import { TradeOffPart } from './trade-off-part.tsx'

interface FindingsPageProps {
  whole: WholeTrial
  scores: ScoreTable
}

/** Weights of the trade-off by response name; null until somebody moves one. */
export type Weights = readonly { response: string; weight: number }[] | null

/** What the data support, words first; worked out in a worker while the page stays alive. */
export function FindingsPage({ whole, scores }: FindingsPageProps) {
  const [weights, setWeights] = useState<Weights>(null)
  const found = useFindings(scores, whole.trial.seed, weights, 0)
  if (found.state === 'working')
    return <Progress label="Working out what the data support" done={null} />
  if (found.state === 'failed')
    return (
      <ErrorNote title="The findings could not be worked out">
        {found.error.message}. The trial is untouched; reload the page, and report it as a bug if it
        comes again.
      </ErrorNote>
    )
  return <Answered whole={whole} answer={found.answer} weights={weights} onWeights={setWeights} />
}

interface AnsweredProps {
  whole: WholeTrial
  answer: FindingsAnswer
  weights: Weights
  onWeights: (weights: Weights) => void
}

function Answered({ whole, answer, weights, onWeights }: AnsweredProps) {
  const { findings, scores, conclusion } = answer
  const [main] = findings.responses
  if (!main) return <p>No response was planned, so there is nothing to find.</p>
  const naming = { factor: findings.factor, unit: findings.unit }
  const letters = lettersByName(whole)
  const sentence = verdictSentence(main, naming)
  return (
    <div className={styles.page}>
      <p className={styles.sentence}>
        {sentence.shown} <span className={styles.known}>{sentence.known}</span>
      </p>
      <ResponsePart whole={whole} answer={answer} index={0} />
      <div className={styles.columns}>
        <div>
          <PairsPart answer={answer} index={0} letters={letters} />
          <Saying answer={answer} index={0} seed={whole.trial.seed} />
        </div>
        <div>
          <Ladder found={main} naming={naming} />
          <Easiest main={main} scores={scores} letters={letters} />
          <CarryOn whole={whole} answer={answer} />
        </div>
      </div>
      <TasterPart whole={whole} answer={answer} />
      {findings.responses.length > 1 ? (
        <AlsoSeen whole={whole} answer={answer} letters={letters} />
      ) : null}
      <TradeOffPart answer={answer} weights={weights} onWeights={onWeights} />
      <Section title="What it rests on">
        <ul className={styles.plainList}>
          {restsOn(scores, main, 0).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        {conclusion.rung === null ? null : <Method topics={['rungs', 'levels']} />}
      </Section>
    </div>
  )
}
