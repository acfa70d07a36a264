import { useLiveQuery } from 'dexie-react-hooks'
import { useContext, useState } from 'react'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { lateComponent } from '@/app/kit/page/late-view.tsx'
import { LessonsContext } from '@/app/kit/page/lessons-context.ts'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { ChoiceRow } from './choice-row.tsx'
import { openHouses } from './open-houses.ts'
import type { Bake } from './start-bake.ts'
import { openBake, openBakeOf, openBakes, type Shelf, shelves } from './start-choices.ts'
import styles from './start-place.module.css'
import { takenText } from './taken-text.ts'

const BakeShelf = lateComponent(
  async () => (await import('./bake-shelf.tsx')).BakeShelf,
  <Progress label="Opening what can be begun from" done={null} />,
)

interface AskedBakeProps {
  bake: Bake | null
  onBake: (bake: Bake) => void
}

/** The first question: the plain loaf and the samples one press each, what is many behind one press; no row for what the notebook has not. */
export function AskedBake({ bake, onBake }: AskedBakeProps) {
  const { notebook } = useServices()
  const lessons = useContext(LessonsContext)
  const [shelf, setShelf] = useState<Shelf | null>(null)
  const houses = useLiveQuery(() => notebook.houses(), [notebook])
  const trials = useLiveQuery(async () => {
    const shelved = { search: '', most: 1 }
    const pages = await Promise.all(
      (['book', 'archive'] as const).map((on) => notebook.bookPage({ ...shelved, shelf: on })),
    )
    return pages.some(({ lines }) => lines.length > 0)
  }, [notebook])
  const has = (value: Shelf) => {
    if (value === 'house') return openHouses(houses ?? [], lessons).length > 0
    return value !== 'trial' || trials === true
  }
  const open = openBakeOf(bake)
  return (
    <Section title="What do you bake?">
      <div className={styles.choices}>
        {openBakes.map((choice) => (
          <ChoiceRow
            key={choice.value}
            name={choice.name}
            hint={choice.hint}
            pressed={choice.value === open}
            onPress={() => onBake(openBake(choice.value))}
          />
        ))}
      </div>
      <div className={styles.shelves}>
        {shelves
          .filter(({ value }) => has(value))
          .map(({ value, name }) => (
            <Button key={value} pressed={bake?.from === value} onPress={() => setShelf(value)}>
              {name}
            </Button>
          ))}
      </div>
      {bake && !open ? <p className={styles.soft}>{takenText(bake)}</p> : null}
      {shelf ? (
        <ErrorBoundary what="what can be begun from" of={shelf}>
          <BakeShelf
            shelf={shelf}
            onBake={(next) => {
              setShelf(null)
              onBake(next)
            }}
            onClose={() => setShelf(null)}
          />
        </ErrorBoundary>
      ) : null}
    </Section>
  )
}
