import styles from '@/app/findings/findings.module.css'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { decimalText, plainNumber } from '@/core/units/number-text.ts'
import { levelInWords, responseInWords } from '@/core/wording/findings/named-in-findings.ts'
import { reasonText } from '@/core/wording/findings/reason-text.ts'
import { tradeOffSentence } from '@/core/wording/findings/trade-off-sentence.ts'
import { Method } from './method.tsx'
import { PartFold } from './part-fold.tsx'

interface TradeOffPartProps {
  answer: FindingsAnswer
  weights: Weights
  onWeights: (weights: Weights) => void
}

/** All responses weighed against one another, the weights under the baker's fingers; its parts always beside it. */
export function TradeOffPart({ answer, weights, onWeights }: TradeOffPartProps) {
  const { findings } = answer
  const { tradeOff } = findings
  if (!isPresent(tradeOff))
    return (
      <PartFold title="Trade-off" result={reasonText(tradeOff)}>
        <Method what="a trade-off is" topics={['tradeOff']} />
      </PartFold>
    )
  const now = weights ?? tradeOff.weights
  const weigh = (responseId: string, weight: number) =>
    onWeights(now.map((each) => (each.responseId === responseId ? { responseId, weight } : each)))
  return (
    <PartFold title="Trade-off" result={tradeOffSentence(tradeOff, findings)}>
      <div className={styles.stack}>
        <div className={styles.weights}>
          {now.map(({ responseId, weight }) => (
            <label key={responseId}>
              <span>
                {responseInWords(responseId, findings)} <b>{plainNumber(weight)}</b>
              </span>
              <input
                type="range"
                min={0}
                max={3}
                step={0.5}
                value={weight}
                onChange={(event) => weigh(responseId, event.currentTarget.valueAsNumber)}
              />
            </label>
          ))}
        </div>
        <LedgerTable
          caption="From 0, not acceptable, to 1, as good as it gets"
          rowHead="Level"
          columns={[
            { key: 'overall', head: 'Whole' },
            ...tradeOff.weights.map(({ responseId }) => ({
              key: responseId,
              head: responseInWords(responseId, findings),
            })),
          ]}
          rows={tradeOff.levels.map(({ level, overall, parts }) => ({
            key: level,
            levelIds: [level],
            head: levelInWords(level, findings),
            cells: [
              isPresent(overall) ? decimalText(overall, 2) : '–',
              ...parts.map(({ desirability }) =>
                isPresent(desirability) ? decimalText(desirability, 2) : '–',
              ),
            ],
          }))}
        />
        <Method what="the trade-off was" topics={['tradeOff']} />
      </div>
    </PartFold>
  )
}

/** Weights of the trade-off by response id; null until somebody moves one. */
export type Weights = readonly { responseId: string; weight: number }[] | null
