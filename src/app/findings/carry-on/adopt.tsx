import { useState } from 'react'
import { useLocation } from 'wouter'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { restingOn } from '@/core/findings/judged/resting-on.ts'
import { adoptLevel } from '@/core/house/adopt-level.ts'
import { revisedHouse, withMoreEvidence } from '@/core/house/changed-house.ts'
import { type House, houseInForce, type RestsOn } from '@/core/house/house-record.ts'
import type { Level } from '@/core/trial/level.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { levelText } from '@/core/wording/words/level-text.ts'

interface AdoptProps {
  whole: WholeTrial
  level: Level
  because: RestsOn['because']
  /** What the findings say now. */
  said: string
  kind: 'primary' | 'plain'
}

/**
 * Keeps a level as a house formula and goes there. Where the trial before this one stands behind a house formula already, that
 * one gets a revision more, resting on both.
 */
export function Adopt({ whole, level, because, said, kind }: AdoptProps) {
  const { notebook, newId, now, zone } = useServices()
  const [, go] = useLocation()
  const plan = planInForce(whole)
  const levelName = levelText(level, plan.factor.unitOfMeasure)
  const [open, setOpen] = useState(false)
  const [name, setName] = useState(`House dough, ${levelName}`)
  const restsOn = restingOn(whole, level, { because, levelName, said })
  const adopted = adoptLevel(plan, level, restsOn, { at: now(), zone })

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
        Adopt {levelName}
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
        {adopted.ok ? (
          <>
            <p>
              Formula, method, temperatures and what it rests on are kept as a record of its own in
              the notebook, to be weighed out at any yield.
            </p>
            <TextField label="Name" value={name} onValue={setName} />
          </>
        ) : (
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
