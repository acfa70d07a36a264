import { useState } from 'react'
import { levelFills } from '@/app/charts/level-fills.ts'
import styles from '@/app/findings/findings.module.css'
import { ChartFrame } from '@/app/findings/parts/chart-frame.tsx'
import { ChartWaiting } from '@/app/findings/parts/chart-waiting.tsx'
import { responseChart } from '@/app/findings/parts/lazy-charts.ts'
import { BlockTable } from '@/app/findings/parts/levels-table.tsx'
import { sayMean } from '@/app/findings/parts/say-mean.ts'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { LateView } from '@/app/kit/page/late-view.tsx'
import { NotWorkedOut } from '@/app/kit/page/not-worked-out.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { useAnswer } from '@/app/worker/use-answer.ts'
import { pooledAxisLevels, pooledChart } from '@/core/figure/pooled-chart.ts'
import type { Pooled, PooledAnswer } from '@/core/findings/pooled/pooled-trials.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { bestLabel } from '@/core/wording/findings/best-label.ts'
import { pooledRefusalOnScreen, pooledText } from '@/core/wording/findings/pooled-text.ts'
import { toldQuestion } from './told-question.ts'

/** What the trials say together, worked out off the screen: the sentence, one chart, the agreement, and whose kitchens they are. */
export function TogetherFound({ trials }: { trials: readonly WholeTrial[] }) {
  const asked = useAnswer(
    'findings',
    trials,
    async (service, all): Promise<PooledAnswer> => await service.together([...all]),
  )
  if (asked.state === 'failed')
    return <NotWorkedOut title="The trials could not be looked at together" error={asked.error} />
  if (asked.state === 'working' || asked.newer)
    return <Progress label="Working out what they say together" done={null} />
  const { answer } = asked
  if (answer.ok) return <Answer pooled={answer.pooled} />
  const question = (at: number) => {
    const whole = trials[at]
    return whole ? toldQuestion(whole) : ''
  }
  const refused = pooledRefusalOnScreen(
    answer,
    question('at' in answer ? answer.at : 0),
    question(0),
  )
  return (
    <ErrorNote title="No one answer">
      <p>{refused.text}</p>
      <ul>
        {refused.differences.map((difference) => (
          <li key={difference}>{difference}</li>
        ))}
      </ul>
    </ErrorNote>
  )
}

const toTenth = (value: number) => Math.round(value * 10) / 10

function Answer({ pooled }: { pooled: Pooled }) {
  const [trial, setTrial] = useState('')
  const { head, rows, sentences, ofTrials } = pooledText(pooled)
  const [first, ...others] = sentences
  const chart = pooledChart(pooled)
  const names = pooled.levels.map(({ name }) => name)
  const span = chart.best && pooled.model.best.ok ? pooled.model.best : null
  const fieller = span?.fieller.kind === 'interval' ? span.fieller : null
  return (
    <div className={styles.page}>
      <p className={styles.sentence}>{first}</p>
      <ChartFrame
        title={pooled.responseName}
        tools={
          <SelectField
            label="Whose doughs"
            hideLabel
            value={trial}
            options={[
              { value: '', label: 'All trials' },
              ...pooled.trials.map(({ question }, at) => ({
                ...{ value: String(at), label: `${at + 1}. ${question}` },
              })),
            ]}
            onValue={setTrial}
          />
        }
        picture={
          <LateView
            part={responseChart}
            waiting={<ChartWaiting heightPixels={380} />}
            props={{
              chart,
              fills: levelFills(pooledAxisLevels(pooled)),
              label: `${pooled.responseName} by ${pooled.factorName}, ${pooled.trials.length} trials. ${first ?? ''}`,
              bestText:
                span && fieller
                  ? bestLabel(
                      {
                        value: span.vertex,
                        low: toTenth(fieller.low),
                        high: toTenth(fieller.high),
                      },
                      names,
                      pooled.unitOfMeasure,
                    )
                  : null,
              marginText: null,
              tasterId: trial === '' ? null : trial,
              lit: null,
              say: (mean) => sayMean(mean, pooled.unitOfMeasure),
            }}
          />
        }
        table={
          <BlockTable
            block={{
              ...{ kind: 'table', caption: 'Together, by level', head, rows },
              figures: head.map((_, at) => at > 0),
            }}
          />
        }
      />
      <Section title="How far it carries">
        {others.map((sentence) => (
          <p key={sentence} className={styles.words}>
            {sentence}
          </p>
        ))}
      </Section>
      <Section title="Whose doughs and kitchens">
        <ol>
          {ofTrials.map((sentence, at) => (
            <li key={pooled.trials[at]?.trialId}>{sentence}</li>
          ))}
        </ol>
      </Section>
    </div>
  )
}
