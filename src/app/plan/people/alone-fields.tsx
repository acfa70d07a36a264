import { useMemo } from 'react'
import { Switch } from '@/app/kit/field/switch.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import panel from '@/app/plan/panels/panel.module.css'
import { withCups, withShuffledPlates } from '@/core/plan-edits/people/alone.ts'
import { cupSheet } from '@/core/weighing/cup-sheet.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { noCupsText } from '@/core/wording/plan/no-cups-text.ts'
import { oneCanShow } from '@/core/wording/tasting/alone-text.ts'

/** For whoever tastes alone, or weighs and tastes: plates that are shuffled, doughs from lidded cups. */
export function AloneFields() {
  const plan = usePlanPage((page) => page.plan)
  const kitchen = usePlanPage((page) => page.kitchen)
  const { change } = usePlanActions()
  const cups = useMemo(() => cupSheet(weighSheet(plan, kitchen)), [plan, kitchen])
  const { shuffledPlates = false, cups: fromCups = false } = plan.atTable ?? {}
  const alone = plan.tasters.length === 1
  if (!alone && !shuffledPlates && !fromCups) return null
  return (
    <>
      <p className={panel.soft}>{oneCanShow}</p>
      {plan.serving === 'rested' || shuffledPlates ? (
        <Switch
          label="I plate for myself and lose track"
          hint="Letters under equal plates, shuffled with shut eyes; scored by plate, everything twice."
          on={shuffledPlates}
          onSwitch={(on) => change((each) => withShuffledPlates(each, on))}
        />
      ) : null}
      {cups.ok || fromCups ? (
        <Switch
          label="I weigh from lidded cups, without knowing the level"
          hint="The same grams for every dough, and one cup each, poured out whole. Two sheets wait at the bench."
          on={fromCups}
          onSwitch={(on) => change((each) => withCups(each, on))}
        />
      ) : null}
      {cups.ok ? null : <p className={panel.soft}>{noCupsText(cups.reason)}</p>}
    </>
  )
}
