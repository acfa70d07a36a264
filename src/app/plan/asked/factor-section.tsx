import { Choice } from '@/app/kit/field/choice.tsx'
import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { visibleName } from '@/app/plan/field/field-checks.ts'
import { useTroubleAt } from '@/app/plan/field/plan-field.tsx'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanSection } from '@/app/plan/page/plan-section.tsx'
import { useServices } from '@/app/services/services.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { factorKinds, factsOfKind } from '@/core/plan-edits/factor/factor-kinds.ts'
import {
  hasOwnWater,
  withLevelWaters,
  withOwnWater,
  withSameWater,
} from '@/core/plan-edits/levels/own-water.ts'
import { shareWaters } from '@/core/plan-edits/levels/share-waters.ts'
import { inFactor } from '@/core/plan-edits/parts/in-part.ts'
import { withDoughs } from '@/core/plan-edits/pieces/with-doughs.ts'
import type { Factor } from '@/core/trial/factor.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { factorKindNames } from '@/core/wording/plan/factor-kind-name.ts'
import { FactorTargetFields } from './factor-target.tsx'

const kindOptions = factorKinds.map(({ kind }) => ({ value: kind, label: factorKindNames[kind] }))
const namesFactor = visibleName('a name for what changes')

/** The one thing that changes: its kind, name and unit, what it moves, where it begins to act and what is held. */
export function FactorSection() {
  const factor = usePlanPage((page) => page.plan.factor)
  const doughs = usePlanPage((page) => page.plan.doughs)
  const { change, changeSaid } = usePlanActions()
  const trouble = useTroubleAt('/doughs')
  const { newId } = useServices()
  const facts = factsOfKind(factor.acts.on)
  const swapsFormula = facts.kind === 'choice' && factor.splitsAt === 'mix'
  const edit = (next: Partial<Factor>) => change((plan) => inFactor(plan, next))
  return (
    <PlanSection id="plan-factor">
      <FieldRow>
        <SelectField
          label="Kind"
          value={facts.kind}
          options={kindOptions}
          onValue={(kind) =>
            changeSaid(
              `Now about: ${factorKindNames[kind]}`,
              (plan) => withFactorKind(plan, kind, newId),
              'level/',
            )
          }
        />
        <PlanText
          field="factor/name"
          path="/factor/name"
          label="Name"
          value={factor.name}
          check={namesFactor}
          onValue={(name) => edit({ name })}
        />
        {facts.kind === 'choice' ? null : (
          <PlanText
            field="factor/unit"
            path="/factor/unitOfMeasure"
            label="Unit"
            {...(facts.kind === 'own'
              ? { hint: 'Such as “turns” or “cm”; empty without one.' }
              : {})}
            value={factor.unitOfMeasure}
            maxLength={40}
            onValue={(unitOfMeasure) => edit({ unitOfMeasure })}
          />
        )}
        <FactorTargetFields />
      </FieldRow>
      <SelectField
        label="Where the lines split"
        hint={splitWords(factor.splitsAt, doughs)}
        value={factor.splitsAt}
        options={splitOptions}
        onValue={(splitsAt) => change((plan) => withDoughs(plan, { splitsAt }))}
      />
      {factor.splitsAt === 'mix' ? null : (
        <Choice
          label="One dough or several?"
          value={doughs}
          problem={trouble}
          options={[
            {
              value: 'one',
              label: 'One dough, divided late',
              hint: 'No difference between doughs can get into the answer.',
            },
            {
              value: 'apart',
              label: 'Each level mixed apart',
              hint: 'Its own dough for every level; differences between doughs ride along.',
            },
          ]}
          onValue={(next) => change((plan) => withDoughs(plan, { doughs: next }))}
        />
      )}
      {facts.movesFormula || swapsFormula ? <HeldChoice /> : null}
      {swapsFormula || facts.kind === 'flour-share' ? <WaterChoice /> : null}
    </PlanSection>
  )
}

const splitOptions = [
  { value: 'mix', label: 'At the mix: each level is its own dough' },
  { value: 'divide', label: 'When the dough is divided' },
  { value: 'proof', label: 'At the proof' },
  { value: 'oven', label: 'In the oven' },
] as const

function splitWords(splitsAt: Factor['splitsAt'], doughs: 'one' | 'apart'): string {
  if (splitsAt === 'mix')
    return 'The unit is the batch: a dough got its level, not a piece or a bite.'
  return doughs === 'one'
    ? 'The unit is the piece: each piece gets its level separately.'
    : 'The levels act on pieces, but each is mixed apart: the unit is the batch.'
}

function WaterChoice() {
  const own = usePlanPage((page) => hasOwnWater(page.plan))
  const kitchen = usePlanPage((page) => page.kitchen)
  const { change } = usePlanActions()
  return (
    <Choice
      label="Same formula, or each at its own water?"
      hint="Options that take up water differently, such as flours, feel wetter or drier at one hydration."
      value={own ? 'own' : 'same'}
      options={[
        {
          value: 'same',
          label: 'The same formula for all',
          hint: 'The answer is about the swap as it stands.',
        },
        {
          value: 'own',
          label: 'Each at its own water',
          hint: 'The answer is about options at their best. Set each one’s hydration under Levels.',
        },
      ]}
      onValue={(next) =>
        change(next === 'own' ? (plan) => atItsWater(plan, kitchen) : withSameWater)
      }
    />
  )
}

/** Options start at the formula's water, shares of a flour each at what it would drink. */
function atItsWater(plan: Plan, kitchen: readonly KitchenThing[]): Plan {
  const shares = shareWaters(plan, kitchen)
  return shares ? withLevelWaters(plan, shares.waters) : withOwnWater(plan)
}

function HeldChoice() {
  const held = usePlanPage((page) => page.plan.factor.held)
  const { change } = usePlanActions()
  return (
    <Choice
      label="Held while the level changes"
      hint="None is free: what is not held rides along, and the fairness check says how far."
      value={held}
      row
      options={[
        { value: 'flour', label: 'The flour of a batch' },
        { value: 'dough', label: 'The dough of a batch' },
        { value: 'piece', label: 'The mass of a piece' },
      ]}
      onValue={(held) => change((plan) => inFactor(plan, { held }))}
    />
  )
}
