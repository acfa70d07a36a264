import { Choice } from '@/app/kit/field/choice.tsx'
import { between, gramsCheck, wholeBetween } from '@/app/plan/field/field-checks.ts'
import { NumberGrid } from '@/app/plan/field/number-grid.tsx'
import { PlanMass } from '@/app/plan/field/plan-mass.tsx'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import type { BatchSize } from '@/core/formula/formula-record.ts'
import { withBatchSize, withBatchSizedBy } from '@/core/plan-edits/formula/batch-size.ts'
import { most } from '@/core/record/most.ts'
import styles from './formula-section.module.css'

const piecesCheck = wholeBetween(1, most.piecesOfBatch)
const lossCheck = between(0, 50, '%')
const path = '/formula/batchSize'

/** How much one batch makes: from its flour, or from pieces and their mass with what hands and bowl keep. */
export function BatchSizeFields() {
  const formula = usePlanPage((page) => page.plan.formula)
  const { change } = usePlanActions()
  const size = formula.batchSize
  const set = (next: BatchSize) => change((plan) => withBatchSize(plan, next))
  return (
    <div data-path={path} className={styles.size}>
      <Choice
        label="Size of a batch"
        value={size.by}
        row
        options={[
          { value: 'flour', label: 'from its flour' },
          { value: 'pieces', label: 'from its pieces' },
        ]}
        onValue={(by) => change((plan) => withBatchSizedBy(plan, by))}
      />
      <NumberGrid>
        {size.by === 'flour' ? (
          <PlanMass
            field="batch/flour"
            path={`${path}/flourGrams`}
            label="Flour of a batch"
            value={size.flourGrams}
            check={gramsCheck}
            onValue={(flourGrams) => set({ ...size, flourGrams })}
          />
        ) : (
          <>
            <PlanNumber
              field="batch/pieces"
              path={`${path}/pieces`}
              label="Pieces from a batch"
              value={size.pieces}
              check={piecesCheck}
              onValue={(pieces) => set({ ...size, pieces })}
            />
            <PlanMass
              field="batch/pieceGrams"
              path={`${path}/pieceGrams`}
              label="Mass of a piece"
              value={size.pieceGrams}
              check={gramsCheck}
              onValue={(pieceGrams) => set({ ...size, pieceGrams })}
            />
            <PlanNumber
              field="batch/loss"
              path={`${path}/lossPercent`}
              label="Kept by hands and bowl"
              unit="%"
              value={size.lossPercent}
              check={lossCheck}
              onValue={(lossPercent) => set({ ...size, lossPercent })}
            />
          </>
        )}
      </NumberGrid>
    </div>
  )
}
