import { Section } from '@/app/kit/section.tsx'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { namingOf } from '@/core/wording/answer-of-rung.ts'
import { boundUnits } from '@/core/wording/bound-units.ts'
import { restsOn } from '@/core/wording/rests-on.ts'
import { tellApartSentence } from '@/core/wording/tell-apart-sentence.ts'
import { verdictSentence } from '@/core/wording/verdict-sentence.ts'
import { AlsoSeen } from './also-seen.tsx'
import { CarryOn } from './carry-on.tsx'
import { Easiest } from './easiest.tsx'
import styles from './findings.module.css'
import { Ladder } from './ladder.tsx'
import { Method } from './method.tsx'
import { PairsPart } from './pairs-part.tsx'
import { PhotosPart } from './photos-part.tsx'
import { ResponsePart } from './response-part.tsx'
import { RidersPart } from './riders-part.tsx'
import { Saying } from './saying.tsx'
import type { Subject } from './subject.ts'
import { TasterPart } from './taster-part.tsx'
import { TooMuchPart } from './too-much-part.tsx'
import { TradeOffPart } from './trade-off-part.tsx'
import { useKeptAnswer } from './use-kept-answer.ts'
import type { Weights } from './weights.ts'

interface AnsweredProps {
  subject: Subject
  answer: FindingsAnswer
  weights: Weights
  onWeights: (weights: Weights) => void
}

/** The findings as they are read: the sentence, the picture with how far it carries beside it, then everything behind it. */
export function Answered({ subject, answer, weights, onWeights }: AnsweredProps) {
  const { findings, scores } = answer
  const [main] = findings.responses
  const naming = namingOf(findings, scores.responses[0])
  const sentence = main ? verdictSentence(main, naming) : null
  useKeptAnswer(subject.whole, sentence)
  if (!main || !sentence) return <p>No response was planned, so there is nothing to find.</p>
  const part = { subject, answer, index: 0 }
  return (
    <div className={styles.page}>
      <p className={styles.sentence}>
        {boundUnits(sentence.shown)}{' '}
        <span className={styles.known}>{boundUnits(sentence.known)}</span>
      </p>
      <Method topics={['verdict', 'pairs', 'control', 'best']} />
      <div className={styles.columns}>
        <div className={styles.lead}>
          <ResponsePart {...part} />
        </div>
        <div className={styles.beside}>
          <Ladder found={main} naming={naming} index={0} />
          <PairsPart {...part} />
          <Easiest main={main} scores={scores} letters={subject.letters} />
          <CarryOn subject={subject} answer={answer} />
        </div>
        <div className={styles.below}>
          <Saying {...part} />
          <TooMuchPart found={main} index={0} />
          <RidersPart subject={subject} />
          <TasterPart {...part} />
          {subject.whole ? <PhotosPart whole={subject.whole} letters={subject.letters} /> : null}
        </div>
      </div>
      {findings.responses.length > 1 ? <AlsoSeen subject={subject} answer={answer} /> : null}
      {findings.discrimination.length > 0 ? (
        <Section title="Can people tell them apart?">
          {findings.discrimination.map((test) => (
            <p key={`${test.test} ${test.between.join()}`}>
              {boundUnits(tellApartSentence(test, findings.factor.unitOfMeasure))}
            </p>
          ))}
          <Method topics={['tellApart', 'discriminators']} />
        </Section>
      ) : null}
      <TradeOffPart answer={answer} weights={weights} onWeights={onWeights} />
      <Section title="What it rests on">
        <ul className={styles.plainList}>
          {restsOn(scores, main, 0).map((line) => (
            <li key={line}>{boundUnits(line)}</li>
          ))}
        </ul>
      </Section>
    </div>
  )
}
