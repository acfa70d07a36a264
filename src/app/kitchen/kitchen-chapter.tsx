import type { ReactNode } from 'react'
import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import styles from './kitchen.module.css'
import type { KitchenChapter } from './kitchen-fields.ts'
import { thingWords } from './thing-words.ts'

interface ChapterProps {
  chapter: KitchenChapter
  things: readonly KitchenThing[]
  /** The form, where one is open in this chapter. */
  form: ReactNode
  onAdd: () => void
  onChange: (thing: KitchenThing) => void
  onRemove: (thing: KitchenThing) => Promise<void>
  onErase: (thing: KitchenThing) => void
  /** A message about one of the things. */
  message: ReactNode
  /** What was learned of one of the things, and of all together. */
  learnedOf: (thing: KitchenThing) => ReactNode
  learned: ReactNode
}

/** One kind of thing in the kitchen: what there is of it, and the way to add, change and remove. */
export function KitchenChapterList(props: ChapterProps) {
  const { chapter, things, form } = props
  const unit = useTemperatureUnit()
  return (
    <Section title={chapter.title}>
      <p className={styles.why}>{chapter.why}</p>
      {things.length > 0 ? (
        <ul className={styles.things} aria-label={chapter.title}>
          {things.map((thing) => {
            const { title, facts } = thingWords(thing, unit)
            const erased = thing.kind === 'taster' && thing.erasedAt !== undefined
            return (
              <li key={thing.id}>
                <p>
                  <b>{title}</b>
                  {facts ? <span className={styles.facts}> {facts}</span> : null}
                  {thing.note ? <span className={styles.note}>{thing.note}</span> : null}
                </p>
                <div className={styles.presses}>
                  {erased ? null : (
                    <Button
                      kind="quiet"
                      size="small"
                      label={`Change ${title}`}
                      onPress={() => props.onChange(thing)}
                    >
                      Change
                    </Button>
                  )}
                  {thing.kind === 'taster' && !erased ? (
                    <Button
                      kind="quiet"
                      size="small"
                      label={`Erase ${title}`}
                      onPress={() => props.onErase(thing)}
                    >
                      Erase
                    </Button>
                  ) : null}
                  <Button
                    kind="quiet"
                    size="small"
                    label={`Remove ${title}`}
                    onPress={() => props.onRemove(thing)}
                  >
                    Remove
                  </Button>
                </div>
                {props.learnedOf(thing)}
              </li>
            )
          })}
        </ul>
      ) : null}
      {props.learned}
      {props.message}
      {form ?? (
        <div>
          <Button onPress={props.onAdd}>Add {chapter.one}</Button>
        </div>
      )}
    </Section>
  )
}
