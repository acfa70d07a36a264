import { useLiveQuery } from 'dexie-react-hooks'
import { useEffect, useMemo, useState } from 'react'
import { useLocation } from 'wouter'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { useNarrow } from '@/app/kit/look/use-narrow.ts'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { type HowMuch, type UsualHowMuch, usualHowMuch } from '@/core/design/proposal/how-much.ts'
import { factsOfKind } from '@/core/plan-edits/factor/factor-kinds.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import type { FactorKind } from '@/core/trial/factor.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { AskedBake } from './asked-bake.tsx'
import { AskedChoices } from './asked-choices.tsx'
import { ProposedPlan } from './proposed-plan.tsx'
import { type Bake, planOfBake } from './start-bake.ts'
import { amounts, changesOf, openBake, saidFirst } from './start-choices.ts'
import styles from './start-place.module.css'

/** The short start of a trial: what is baked, what is changed, how much one can do; then the plan that most likely answers. */
export function StartPlace() {
  const { notebook, newId, now, zone } = useServices()
  const kitchen = useLiveQuery(() => notebook.kitchen(), [notebook])
  const [, go] = useLocation()
  const narrow = useNarrow()
  const [bake, setBake] = useState<Bake | null>(narrow ? null : openBake('plain'))
  const [kind, setKind] = useState<FactorKind | null>(narrow ? null : 'hydration')
  const [amount, setAmount] = useState<UsualHowMuch | 'say' | null>(
    narrow ? null : 'one-evening-alone',
  )
  const [said, setSaid] = useState<HowMuch>(saidFirst)
  const [made, setMade] = useState<{ of: Bake; plan: Plan } | null>(null)
  useEffect(() => {
    if (bake === null || !kitchen) return
    let left = false
    void planOfBake(bake, { newId, at: now(), zone }, kitchen).then((next) => {
      if (!left) setMade({ of: bake, plan: next })
    })
    return () => {
      left = true
    }
  }, [bake, kitchen, newId, now, zone])
  // Of another bake, chosen a moment ago, nothing is proposed.
  const plan = made?.of === bake ? made.plan : null
  const howMuch = useMemo(
    () => (amount === null ? null : amount === 'say' ? said : usualHowMuch[amount]),
    [amount, said],
  )
  const take = async (proposed: Plan) => {
    const trialId = await notebook.createTrial(proposed)
    go(`/trial/${trialId}/plan`)
  }
  const plain = () => take(startingPlan({ newId, at: now(), zone }))
  // Beside the proposal an earlier trial's own factor is what is changed, until another is pressed.
  const takeBake = (next: Bake) => {
    setBake(next)
    if (!narrow && next.from === 'trial') setKind(factsOfKind(next.plan.factor.acts.on).kind)
  }
  const asked = [
    <AskedBake key="bake" bake={bake} onBake={takeBake} />,
    <AskedChoices
      key="change"
      title="What do you change?"
      choices={changesOf(bake)}
      value={kind}
      onValue={setKind}
    />,
    <AskedChoices
      key="amount"
      title="How much can you do?"
      choices={amounts}
      value={amount}
      onValue={setAmount}
    >
      {amount === 'say' ? <Said said={said} onSaid={setSaid} /> : null}
      <p className={styles.soft}>
        Days count more than mouths: only a dough made again says something of what changes.
      </p>
    </AskedChoices>,
  ]
  const answered = [bake, kind, amount].indexOf(null)
  const step = answered === -1 ? 3 : answered
  const back = () => {
    if (step >= 3) setAmount(null)
    else if (step === 2) setKind(null)
    else setBake(null)
  }
  const proposal =
    plan && kind && howMuch ? (
      <ProposedPlan plan={plan} kind={kind} howMuch={howMuch} onTake={take} />
    ) : null
  return (
    <>
      <PageHeading>New trial</PageHeading>
      {narrow ? (
        <div>
          {step < 3 ? asked[step] : proposal}
          {step === 3 && amount === 'say' ? <Said said={said} onSaid={setSaid} /> : null}
          <div className={styles.ways}>
            {step > 0 ? (
              <Button kind="quiet" onPress={back}>
                Back
              </Button>
            ) : (
              <Button kind="quiet" onPress={plain}>
                Skip: a plain loaf to change
              </Button>
            )}
          </div>
        </div>
      ) : (
        <div className={styles.columns}>
          <div>
            {asked}
            <Button kind="quiet" onPress={plain}>
              Skip: a plain loaf to change
            </Button>
          </div>
          <div>{proposal}</div>
        </div>
      )}
    </>
  )
}

const saidFields = [
  { key: 'days', label: 'Days' },
  { key: 'benches', label: 'Benches at once' },
  { key: 'tasters', label: 'Mouths' },
  { key: 'doughs', label: 'Doughs a day' },
  { key: 'bites', label: 'Bites a mouth and day' },
] as const

const saidCheck = (value: number) =>
  Number.isInteger(value) && value >= 1 && value <= 60 ? undefined : 'A whole number from 1 to 60.'

function Said({ said, onSaid }: { said: HowMuch; onSaid: (said: HowMuch) => void }) {
  return (
    <div className={styles.said}>
      {saidFields.map(({ key, label }) => (
        <NumberField
          key={key}
          label={label}
          value={said[key]}
          required
          check={saidCheck}
          onValue={(value) => {
            if (value !== null) onSaid({ ...said, [key]: value })
          }}
        />
      ))}
    </div>
  )
}
