import { Choice } from '@/app/kit/field/choice.tsx'
import { Switch } from '@/app/kit/field/switch.tsx'
import { wholeBetween } from '@/app/plan/field/field-checks.ts'
import { NumberGrid } from '@/app/plan/field/number-grid.tsx'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanSection } from '@/app/plan/page/plan-section.tsx'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import { withPieces } from '@/core/plan-edits/pieces/with-pieces.ts'
import { most } from '@/core/record/most.ts'
import { piecesAsked } from '@/core/trial/pieces-asked.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

const flightsCheck = wholeBetween(1, most.flights)
const spareCheck = wholeBetween(0, most.sparePieces)
const placesCheck = wholeBetween(1, most.placesPerLoad)

/** How many pieces are made and in what rounds they are baked and served. */
export function PiecesSection() {
  const flights = usePlanPage((page) => page.plan.flights)
  const spares = usePlanPage((page) => page.plan.sparePieces)
  const places = usePlanPage((page) => page.plan.placesPerLoad)
  const serving = usePlanPage((page) => page.plan.serving)
  const warmUp = usePlanPage((page) => page.plan.warmUpPiece)
  const rule = usePlanPage((page) => page.plan.servingRule)
  const { change } = usePlanActions()
  const set = (next: Partial<Plan>) => change((plan) => ({ ...plan, ...next }))
  return (
    <PlanSection id="plan-pieces" aside={<PiecesSum />}>
      <Choice
        label="Served"
        value={serving}
        options={[
          {
            value: 'as-baked',
            label: 'as baked',
            hint: 'Hot from the oven: all tasters taste the same piece as it comes.',
          },
          {
            value: 'rested',
            label: 'rested',
            hint: 'Cooled: all are ready before the tasting, and each taster gets an order of their own.',
          },
        ]}
        onValue={(next) => set({ serving: next })}
      />
      <NumberGrid>
        <PlanNumber
          field="flights"
          path="/flights"
          label="Flights a session"
          hint="A flight is one piece of every level."
          value={flights}
          check={flightsCheck}
          onValue={(flights) => change((plan) => withPieces(plan, { flights }))}
        />
        <PlanNumber
          field="places"
          path="/placesPerLoad"
          label="Pieces in the oven at once"
          value={places}
          check={placesCheck}
          onValue={(next) => set({ placesPerLoad: next })}
        />
        <PlanNumber
          field="spares"
          path="/sparePieces"
          label="Spare pieces of each level"
          value={spares}
          check={spareCheck}
          onValue={(sparePieces) => change((plan) => withPieces(plan, { sparePieces }))}
        />
      </NumberGrid>
      <Switch
        label="A warm-up piece first"
        hint="A piece of the control, baked and tasted before the others and not counted."
        on={warmUp}
        onSwitch={(warmUpPiece) => change((plan) => withPieces(plan, { warmUpPiece }))}
      />
      <PlanText
        field="servingRule"
        label="How a serving is cut, topped and offered"
        hint="The same for every piece: carrier, portion, which slice and where in the loaf, crust side, temperature."
        value={rule}
        maxLength={5000}
        onValue={(next) => set({ servingRule: next })}
        wide
      />
      <TroubleHere at="/pieces" />
    </PlanSection>
  )
}

function PiecesSum() {
  const total = usePlanPage((page) => piecesAsked(page.plan).total)
  return <>{total === 1 ? '1 piece' : `${total} pieces`} a session</>
}
