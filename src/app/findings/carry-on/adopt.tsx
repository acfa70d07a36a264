import { useState } from 'react'
import { useLocation } from 'wouter'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import { levelToAdopt } from '@/core/findings/judged/level-to-adopt.ts'
import { restingOn } from '@/core/findings/judged/resting-on.ts'
import { adoptLevel } from '@/core/house/adopt-level.ts'
import { revisedHouse, withMoreEvidence } from '@/core/house/changed-house.ts'
import { type House, houseInForce } from '@/core/house/house-record.ts'
import type { Level } from '@/core/trial/level.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { restsOnText } from '@/core/wording/house/house-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'

interface AdoptProps {
  whole: WholeTrial
  findings: FindingsDocument
  /** The level that stands chosen when the question opens. */
  level: Level
  /** What the findings say now. */
  said: string
  kind: 'primary' | 'plain'
  /** What the press is called; else "Adopt 74 %". */
  title?: string
}

/**
 * Keeps a level as a house formula and goes there: the one that was found, or any other with the baker's reason. Where the trial before this one stands behind a house formula already, that
 * one gets a revision more, resting on both.
 */
export function Adopt({ whole, findings, level, said, kind, title }: AdoptProps) {
  const { notebook, newId, now, zone } = useServices()
  const [, go] = useLocation()
  const plan = planInForce(whole)
  const unit = plan.factor.unitOfMeasure
  const [open, setOpen] = useState(false)
  const [levelId, setLevelId] = useState(level.id)
  const [typedName, setName] = useState<string | null>(null)
  const [reason, setReason] = useState('')
  const picked = plan.levels.find(({ id }) => id === levelId) ?? level
  const because = levelToAdopt(plan, findings, picked)?.because ?? 'picked'
  const levelName = levelText(picked, unit)
  const name = typedName ?? `House dough, ${levelName}`
  const restsOn = restingOn(whole, picked, { because, levelName, said })
  const adopted = adoptLevel(plan, picked, restsOn, { at: now(), zone, note: reason.trim() })

  const keep = async () => {
    if (!adopted.ok || name.trim() === '') return
    const { revision } = adopted
    const before = earlierHouse(await notebook.houses(), whole)
    const house: House = before
      ? revisedHouse(before, withMoreEvidence(houseInForce(before), revision))
      : { id: newId(), name: name.trim(), createdAt: now(), revisions: [revision] }
    await notebook.keepHouse(house)
    go(`/house/${house.id}`)
  }

  return (
    <>
      <Button kind={kind} onPress={() => setOpen(true)}>
        {title ?? `Adopt ${levelText(level, unit)}`}
      </Button>
      <Dialog
        title="House formula"
        open={open}
        onClose={() => setOpen(false)}
        actions={
          <>
            <Button onPress={() => setOpen(false)}>Not now</Button>
            <Button kind="primary" onPress={keep} disabled={!adopted.ok || name.trim() === ''}>
              Keep it
            </Button>
          </>
        }
      >
        <p>
          Formula, method, temperatures and what it rests on are kept as a record of its own in the
          notebook, to be weighed out at any yield.
        </p>
        <SelectField
          label="Level"
          value={levelId}
          options={plan.levels.map((each) => ({ value: each.id, label: levelText(each, unit) }))}
          onValue={setLevelId}
        />
        <p>{restsOnText(restsOn)}</p>
        {because === 'easiest' ? null : (
          <TextField label="Why this one" value={reason} onValue={setReason} />
        )}
        <TextField label="Name" value={name} onValue={setName} />
        {adopted.ok ? null : (
          <Notice kind="caution">
            This level cannot be made by the plan as it stands; Plan says why.
          </Notice>
        )}
      </Dialog>
    </>
  )
}

/** The house formula that rests on this trial, or on the one that it followed. */
function earlierHouse(houses: readonly House[], { trial }: WholeTrial): House | undefined {
  const known = [trial.id, trial.follows?.trialId]
  return houses.find((house) =>
    houseInForce(house).restsOn.some(({ trialId }) => known.includes(trialId)),
  )
}
