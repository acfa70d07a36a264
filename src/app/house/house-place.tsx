import { useLiveQuery } from 'dexie-react-hooks'
import { useContext, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { temperatureText } from '@/app/kit/field/temperature-words.ts'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { LessonCover } from '@/app/kit/page/lesson-cover.tsx'
import { LessonsContext } from '@/app/kit/page/lessons-context.ts'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Paper } from '@/app/kit/page/paper.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useServices } from '@/app/services/services.ts'
import { revisedHouse } from '@/core/house/changed-house.ts'
import { houseCard } from '@/core/house/house-card.ts'
import { type House, houseInForce, type Yield } from '@/core/house/house-record.ts'
import type { Today } from '@/core/house/plan-of-house.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { coveredTrials } from '@/core/lesson/covered-trials.ts'
import {
  houseCaution,
  methodLine,
  restsOnText,
  yieldText,
} from '@/core/wording/house/house-text.ts'
import { dateText } from '@/core/wording/words/date-text.ts'
import styles from './house.module.css'
import { HouseEdit } from './house-edit.tsx'
import { HouseHistory } from './house-history.tsx'
import { HouseLedger } from './house-ledger.tsx'
import { HouseSheet } from './house-sheet.tsx'
import { HouseToday } from './house-today.tsx'
import { HouseYield } from './house-yield.tsx'

/** One house formula: what to weigh at any yield, the method, what it rests on, and the way to the next question. */
export function HousePlace({ houseId }: { houseId: string }) {
  const { notebook } = useServices()
  const lessons = useContext(LessonsContext)
  const found = useLiveQuery(async () => {
    // Both are asked for at once: what is read after another answer, a live query may not watch.
    const [house, kitchen] = await Promise.all([notebook.house(houseId), notebook.kitchen()])
    return { house, kitchen }
  }, [notebook, houseId])
  if (!found) return <Progress label="Opening the house formula" done={null} />
  if (!found.house)
    return (
      <EmptyState
        title="No such house formula is in this notebook."
        action={
          <LinkButton href="#/" kind="primary">
            To the notebook
          </LinkButton>
        }
      >
        It may stand in another browser, or in a backup.
      </EmptyState>
    )
  const [inLesson] = coveredTrials(
    found.house.revisions.flatMap(({ restsOn }) => restsOn.map(({ trialId }) => trialId)),
    lessons,
  )
  if (inLesson !== undefined) return <LessonCover trialId={inLesson} title="House formula" />
  return <OpenHouse key={houseId} house={found.house} kitchen={found.kitchen} />
}

function OpenHouse({ house, kitchen }: { house: House; kitchen: readonly KitchenThing[] }) {
  const { notebook, newId, now, zone } = useServices()
  const [, go] = useLocation()
  const unit = useTemperatureUnit()
  const revision = houseInForce(house)
  const [made, setMade] = useState<Yield>(revision.yield)
  const [today, setToday] = useState<Today>({})
  const [prints, setPrints] = useState(false)
  const card = houseCard(revision, house.name, kitchen, { made, today })
  const degrees = (celsius: number) => temperatureText(celsius, unit)
  const changed = JSON.stringify(made) !== JSON.stringify(revision.yield)

  const keepYield = async () =>
    await notebook.keepHouse(
      revisedHouse(house, { ...revision, at: now(), zone, yield: made, note: '' }),
    )
  const ask = async () => {
    const [{ startingPlan }, { planAround }] = await Promise.all([
      import('@/core/plan-edits/start/starting-plan.ts'),
      import('@/core/plan-edits/start/plan-around.ts'),
    ])
    const plan = planAround(startingPlan({ newId, at: now(), zone }), revision, newId)
    const trialId = await notebook.createTrial(plan)
    go(`/trial/${trialId}/plan`)
  }

  return (
    <div className={styles.house}>
      <PageHeading>{house.name}</PageHeading>
      <p className={styles.made}>For {yieldText(made, card.pieceGrams)}.</p>
      <HouseYield made={made} onMade={setMade} />
      {changed ? (
        <p>
          <Button size="small" onPress={keepYield}>
            Keep this yield
          </Button>
        </p>
      ) : null}
      <HouseLedger card={card} />
      <HouseToday revision={revision} card={card} today={today} onToday={setToday} />
      <Section title="Method">
        <ol className={styles.method}>
          {revision.steps.map((step) => (
            <li key={step.id}>{methodLine(step, degrees)}</li>
          ))}
        </ol>
      </Section>
      <Section title="What it rests on">
        <ul className={styles.rests}>
          {revision.restsOn.map((one) => (
            <li key={one.trialId}>
              <Link href={`/trial/${one.trialId}/findings`}>{one.question}</Link>
              <span className={styles.soft}>{restsOnText(one)}</span>
              {one.said === '' ? null : <span className={styles.soft}>{one.said}</span>}
            </li>
          ))}
        </ul>
        <p className={styles.soft}>
          Adopted {dateText(house.createdAt, revision.zone)}. {houseCaution}
        </p>
      </Section>
      <HouseEdit house={house} />
      <HouseHistory house={house} />
      <div className={styles.presses}>
        <Button onPress={() => setPrints(true)}>Print</Button>
        <Button kind="primary" onPress={ask}>
          Ask the next question
        </Button>
      </div>
      {prints ? (
        <Paper onDone={() => setPrints(false)} look={styles.a5 ?? ''}>
          <HouseSheet house={house} card={card} made={made} degrees={degrees} />
        </Paper>
      ) : null}
    </div>
  )
}
