import { CarryOn, FirstSteps } from '@/app/findings/carry-on/carry-on.tsx'
import { useKeptAnswer } from '@/app/findings/carry-on/use-kept-answer.ts'
import { AlsoSeen } from '@/app/findings/parts/also-seen.tsx'
import { BakingNext } from '@/app/findings/parts/baking-next.tsx'
import { CopyAnswer } from '@/app/findings/parts/copy-answer.tsx'
import { DirectionAndBest } from '@/app/findings/parts/direction-and-best.tsx'
import { Ladder } from '@/app/findings/parts/ladder.tsx'
import { OneEveningParts } from '@/app/findings/parts/one-evening.tsx'
import { PairsPart } from '@/app/findings/parts/pairs-part.tsx'
import { PartFold } from '@/app/findings/parts/part-fold.tsx'
import { PhotosPart } from '@/app/findings/parts/photos-part.tsx'
import { RankingPart } from '@/app/findings/parts/ranking-part.tsx'
import { ResponsePart } from '@/app/findings/parts/response-part.tsx'
import { RestsOnPart } from '@/app/findings/parts/rests-on-part.tsx'
import { RidersPart } from '@/app/findings/parts/riders-part.tsx'
import { TablePart } from '@/app/findings/parts/table-part.tsx'
import { TasterPart } from '@/app/findings/parts/taster-part.tsx'
import { TellApartPart } from '@/app/findings/parts/tell-apart-part.tsx'
import { TooMuchPart } from '@/app/findings/parts/too-much-part.tsx'
import { TradeOffPart } from '@/app/findings/parts/trade-off-part.tsx'
import { WhatIsOpen } from '@/app/findings/parts/what-is-open.tsx'
import { WhatLevelsCost } from '@/app/findings/parts/what-levels-cost.tsx'
import { AfterFrame } from '@/app/kit/page/after-frame.tsx'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { answerToCopy } from '@/core/wording/findings/bake-next.ts'
import { answerText, headline, spokenOf } from '@/core/wording/findings/headline.ts'
import { openParts } from '@/core/wording/findings/open-parts.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import styles from './findings.module.css'
import type { FindingsSource } from './findings-source.ts'
import type { Weights } from './parts/trade-off-part.tsx'

interface FindingsSectionsProps {
  source: FindingsSource
  answer: FindingsAnswer
  weights: Weights
  onWeights: (weights: Weights) => void
}

/** The findings as they are read: the sentence and what to bake, the picture, how far it carries; then a line for everything behind it. */
export function FindingsSections({ source, answer, weights, onWeights }: FindingsSectionsProps) {
  const { findings, scores } = answer
  const [main] = findings.responses
  const naming = namingOf(findings, scores.responses[0])
  const sentence = main ? headline(main, naming) : null
  useKeptAnswer(answer.asOf, sentence)
  if (!main || !sentence) return <p>No response was planned, so there is nothing to find.</p>
  const spoken = spokenOf(main, naming)
  const part = { source, answer, index: 0 }
  const evening = main.conclusion.oneEvening ? source.whole : null
  const parts = [
    { what: 'how to carry on', shown: <CarryOn source={source} answer={answer} /> },
    { what: 'which differ', shown: <PairsPart {...part} /> },
    { what: 'what is said of the best', shown: <DirectionAndBest {...part} /> },
    {
      what: 'what each level costs',
      shown: <WhatLevelsCost main={main} naming={naming} scores={scores} />,
    },
    { what: 'what the riders did', shown: <RidersPart source={source} /> },
    { what: 'too much or too little', shown: <TooMuchPart findings={findings} index={0} /> },
    { what: 'the tasters', shown: <TasterPart {...part} /> },
    {
      what: 'what the table says of itself',
      shown: source.whole ? <TablePart whole={source.whole} nameOf={source.nameOf} /> : null,
    },
    { what: 'in what order they were put', shown: <RankingPart findings={findings} /> },
    {
      what: 'whether people can tell them apart',
      shown: <TellApartPart findings={findings} />,
    },
    { what: 'what else was seen', shown: <AlsoSeen source={source} answer={answer} /> },
    {
      what: 'the trade-off',
      shown: <TradeOffPart answer={answer} weights={weights} onWeights={onWeights} />,
    },
    {
      what: 'the photos',
      shown:
        source.whole && !evening ? (
          <PhotosPart whole={source.whole} letters={source.letters} />
        ) : null,
    },
    {
      what: 'how far this carries',
      shown: evening ? (
        <PartFold title="How far this carries" result={sentence.known}>
          <Ladder found={main} naming={naming} />
        </PartFold>
      ) : null,
    },
    { what: 'what it rests on', shown: <RestsOnPart source={source} answer={answer} /> },
  ]
  return (
    <div className={styles.page}>
      <div className={styles.opening}>
        <p className={styles.sentence}>
          {boundUnits(sentence.shown)}{' '}
          <span className={styles.known}>{boundUnits(sentence.known)}</span>
        </p>
        <div className={styles.next}>
          <ErrorBoundary what="what to bake next" of={answer}>
            <BakingNext spoken={spoken} scores={scores} />
            <FirstSteps source={source} answer={answer} />
            <CopyAnswer
              text={answerToCopy(
                source.whole ? planInForce(source.whole).question : null,
                answerText(sentence),
                spoken,
                scores,
              )}
            />
          </ErrorBoundary>
        </div>
      </div>
      {evening ? (
        <ErrorBoundary what="what the evening yielded" of={answer}>
          <OneEveningParts source={source} whole={evening} answer={answer} />
        </ErrorBoundary>
      ) : (
        <>
          <WhatIsOpen parts={openParts(spoken)} />
          <ErrorBoundary what="the picture" of={answer}>
            <ResponsePart {...part} />
          </ErrorBoundary>
          <ErrorBoundary what="how far this carries" of={answer}>
            <Ladder found={main} naming={naming} />
          </ErrorBoundary>
        </>
      )}
      <AfterFrame>
        <div className={styles.folds}>
          {parts.map(({ what, shown }) => (
            <ErrorBoundary key={what} what={what} of={answer}>
              {shown}
            </ErrorBoundary>
          ))}
        </div>
      </AfterFrame>
    </div>
  )
}
