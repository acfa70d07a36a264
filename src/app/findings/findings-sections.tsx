import { CarryOn } from '@/app/findings/carry-on/carry-on.tsx'
import { useKeptAnswer } from '@/app/findings/carry-on/use-kept-answer.ts'
import { AlsoSeen } from '@/app/findings/parts/also-seen.tsx'
import { DirectionAndBest } from '@/app/findings/parts/direction-and-best.tsx'
import { Easiest } from '@/app/findings/parts/easiest.tsx'
import { Ladder } from '@/app/findings/parts/ladder.tsx'
import { Method } from '@/app/findings/parts/method.tsx'
import { PairsPart } from '@/app/findings/parts/pairs-part.tsx'
import { PhotosPart } from '@/app/findings/parts/photos-part.tsx'
import { ResponsePart } from '@/app/findings/parts/response-part.tsx'
import { RidersPart } from '@/app/findings/parts/riders-part.tsx'
import { TasterPart } from '@/app/findings/parts/taster-part.tsx'
import { TooMuchPart } from '@/app/findings/parts/too-much-part.tsx'
import { TradeOffPart } from '@/app/findings/parts/trade-off-part.tsx'
import type { Weights } from '@/app/findings/parts/weights.ts'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { hangsSentence } from '@/core/wording/findings/hangs-sentence.ts'
import { headline } from '@/core/wording/findings/headline.ts'
import { restsOn } from '@/core/wording/findings/rests-on.ts'
import { tellApartSentence } from '@/core/wording/findings/tell-apart-sentence.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import styles from './findings.module.css'
import type { FindingsSource } from './findings-source.ts'

interface FindingsSectionsProps {
  source: FindingsSource
  answer: FindingsAnswer
  weights: Weights
  onWeights: (weights: Weights) => void
}

/** The findings as they are read: the sentence, the picture with how far it carries beside it, then everything behind it. */
export function FindingsSections({ source, answer, weights, onWeights }: FindingsSectionsProps) {
  const { findings, scores } = answer
  const [main] = findings.responses
  const naming = namingOf(findings, scores.responses[0])
  const sentence = main ? headline(main, naming) : null
  useKeptAnswer(source.whole, sentence)
  if (!main || !sentence) return <p>No response was planned, so there is nothing to find.</p>
  const part = { source, answer, index: 0 }
  return (
    <div className={styles.page}>
      <p className={styles.sentence}>
        {boundUnits(sentence.shown)}{' '}
        <span className={styles.known}>{boundUnits(sentence.known)}</span>
      </p>
      <Method topics={['verdict', 'pairs', 'control', 'best']} />
      <div className={styles.columns}>
        <div className={styles.lead}>
          <ErrorBoundary what="the picture" of={answer}>
            <ResponsePart {...part} />
          </ErrorBoundary>
        </div>
        <div className={styles.beside}>
          <ErrorBoundary what="how far this carries" of={answer}>
            <Ladder found={main} naming={naming} index={0} />
          </ErrorBoundary>
          <ErrorBoundary what="which differ" of={answer}>
            <PairsPart {...part} />
          </ErrorBoundary>
          <ErrorBoundary what="the easiest that is as good" of={answer}>
            <Easiest main={main} naming={naming} scores={scores} letters={source.letters} />
          </ErrorBoundary>
          <ErrorBoundary what="how to carry on" of={answer}>
            <CarryOn source={source} answer={answer} />
          </ErrorBoundary>
        </div>
        <div className={styles.below}>
          <ErrorBoundary what="what is said of the best" of={answer}>
            <DirectionAndBest {...part} />
          </ErrorBoundary>
          <ErrorBoundary what="too much or too little" of={answer}>
            <TooMuchPart findings={findings} index={0} />
          </ErrorBoundary>
          <ErrorBoundary what="what the riders did" of={answer}>
            <RidersPart source={source} />
          </ErrorBoundary>
          <ErrorBoundary what="the tasters" of={answer}>
            <TasterPart {...part} />
          </ErrorBoundary>
          {source.whole ? (
            <ErrorBoundary what="the photos" of={answer}>
              <PhotosPart whole={source.whole} letters={source.letters} />
            </ErrorBoundary>
          ) : null}
        </div>
      </div>
      {findings.responses.length > 1 ? (
        <ErrorBoundary what="what else was seen" of={answer}>
          <AlsoSeen source={source} answer={answer} />
        </ErrorBoundary>
      ) : null}
      {findings.discrimination.length > 0 ? (
        <ErrorBoundary what="whether people can tell them apart" of={answer}>
          <Section title="Can people tell them apart?">
            {findings.discrimination.map((test) => (
              <p key={`${test.test} ${test.between.join()}`}>
                {boundUnits(tellApartSentence(test, findings))}
              </p>
            ))}
            <Method topics={['tellApart', 'discriminators']} />
          </Section>
        </ErrorBoundary>
      ) : null}
      <ErrorBoundary what="the trade-off" of={answer}>
        <TradeOffPart answer={answer} weights={weights} onWeights={onWeights} />
      </ErrorBoundary>
      <Section title="What it rests on">
        <ul className={styles.plainList}>
          {[...restsOn(scores, main, 0), hangsSentence(main.conclusion, source.nameOf)]
            .filter(Boolean)
            .map((line) => (
              <li key={line}>{boundUnits(line)}</li>
            ))}
        </ul>
      </Section>
    </div>
  )
}
