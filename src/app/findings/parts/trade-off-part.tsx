import styles from '@/app/findings/findings.module.css'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { decimalText, plainNumber } from '@/core/units/number-text.ts'
import { reasonText } from '@/core/wording/findings/reason-text.ts'
import { levelNameText } from '@/core/wording/words/level-text.ts'
import { Fold } from './fold.tsx'
import { Method } from './method.tsx'
import type { Weights } from './weights.ts'

interface TradeOffPartProps {
  answer: FindingsAnswer
  weights: Weights
  onWeights: (weights: Weights) => void
}

/** All responses weighed against one another, the weights under the baker's fingers; its parts always beside it. */
export function TradeOffPart({ answer, weights, onWeights }: TradeOffPartProps) {
  const { tradeOff, factor } = answer.findings
  if (!isPresent(tradeOff)) return <Fold title="Trade-off">{reasonText(tradeOff)}</Fold>
  const now = weights ?? tradeOff.weights
  const weigh = (response: string, weight: number) =>
    onWeights(now.map((each) => (each.response === response ? { response, weight } : each)))
  return (
    <Fold title="Trade-off: weigh the responses against one another">
      <div className={styles.stack}>
        <div className={styles.weights}>
          {now.map(({ response, weight }) => (
            <label key={response}>
              <span>
                {response} <b>{plainNumber(weight)}</b>
              </span>
              <input
                type="range"
                min={0}
                max={3}
                step={0.5}
                value={weight}
                onChange={(event) => weigh(response, event.currentTarget.valueAsNumber)}
              />
            </label>
          ))}
        </div>
        <LedgerTable
          caption="From 0, not acceptable, to 1, as good as it gets"
          rowHead="Level"
          columns={[
            { key: 'overall', head: 'Whole' },
            ...tradeOff.weights.map(({ response }) => ({ key: response, head: response })),
          ]}
          rows={tradeOff.levels.map(({ level, overall, parts }) => ({
            key: String(level),
            head: levelNameText(level, factor.unitOfMeasure),
            cells: [
              isPresent(overall) ? decimalText(overall, 2) : '–',
              ...parts.map(({ desirability }) =>
                isPresent(desirability) ? decimalText(desirability, 2) : '–',
              ),
            ],
          }))}
        />
        <Method topics={['tradeOff']} />
      </div>
    </Fold>
  )
}
