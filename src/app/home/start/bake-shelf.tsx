import { useLiveQuery } from 'dexie-react-hooks'
import { useContext, useMemo } from 'react'
import { LessonsContext } from '@/app/kit/page/lessons-context.ts'
import { PasteFormula } from '@/app/kit/taken/paste-formula.tsx'
import { TrialPicker } from '@/app/kit/taken/trial-picker.tsx'
import { useServices } from '@/app/services/services.ts'
import { takePlan } from '@/app/services/take-plan.ts'
import { houseInForce } from '@/core/house/house-record.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import { usualBreads } from '@/core/plan-edits/start/usual-breads.ts'
import { restsOnText } from '@/core/wording/house/house-text.ts'
import { usualBreadsRestOn, usualBreadText } from '@/core/wording/plan/usual-bread-text.ts'
import { asSentenceStart } from '@/core/wording/words/list-text.ts'
import { ListToTake } from './list-to-take.tsx'
import { openHouses } from './open-houses.ts'
import type { Bake } from './start-bake.ts'
import type { Shelf } from './start-choices.ts'

interface BakeShelfProps {
  shelf: Shelf
  onBake: (bake: Bake) => void
  onClose: () => void
}

/** What stands behind one press of the first question: usual breads, house formulas, earlier trials, or a text of one's own. */
export function BakeShelf(props: BakeShelfProps) {
  switch (props.shelf) {
    case 'usual':
      return <UsualBreads {...props} />
    case 'house':
      return <Houses {...props} />
    case 'trial':
      return <EarlierTrials {...props} />
    case 'pasted':
      return <Pasted {...props} />
  }
}

function UsualBreads({ onBake, onClose }: BakeShelfProps) {
  return (
    <ListToTake
      title="Another usual bread"
      note={usualBreadsRestOn}
      list={usualBreads.map((bread) => ({
        key: bread.key,
        name: asSentenceStart(bread.name),
        said: usualBreadText(bread),
      }))}
      onTake={(key) => {
        const bread = usualBreads.find((each) => each.key === key)
        if (bread) onBake({ from: 'usual', bread })
      }}
      onClose={onClose}
    />
  )
}

function Houses({ onBake, onClose }: BakeShelfProps) {
  const { notebook } = useServices()
  const lessons = useContext(LessonsContext)
  const all = useLiveQuery(() => notebook.houses(), [notebook])
  const houses = openHouses(all ?? [], lessons)
  return (
    <ListToTake
      title="From a house formula"
      list={houses.map((house) => {
        const rests = houseInForce(house).restsOn.at(-1)
        return { key: house.id, name: house.name, said: rests ? restsOnText(rests) : '' }
      })}
      onTake={(key) => {
        const house = houses.find(({ id }) => id === key)
        if (house) onBake({ from: 'house', house })
      }}
      onClose={onClose}
    />
  )
}

function EarlierTrials({ onBake, onClose }: BakeShelfProps) {
  const { notebook } = useServices()
  const trials = useLiveQuery(() => notebook.summaries({ archived: true }), [notebook])
  return (
    <TrialPicker
      title="From an earlier trial"
      takes="its plan"
      trials={trials}
      onPick={async (trialId) => {
        const plan = await takePlan(notebook, trialId)
        if (plan) onBake({ from: 'trial', plan })
        else onClose()
      }}
      onClose={onClose}
    />
  )
}

function Pasted({ onBake, onClose }: BakeShelfProps) {
  const { newId, now, zone } = useServices()
  const plain = useMemo(() => startingPlan({ newId, at: now(), zone }), [newId, now, zone])
  return (
    <PasteFormula
      plan={plain}
      newId={newId}
      onTake={(formula) => onBake({ from: 'pasted', formula })}
      onClose={onClose}
    />
  )
}
