import { Fragment, type ReactNode } from 'react'
import { useManner } from '@/app/kit/field/use-manner.ts'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { InlinePress } from '@/app/kit/press/inline-press.tsx'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import styles from './kitchen.module.css'
import type { KitchenChapter } from './kitchen-fields.ts'
import { thingSentence } from './thing-sentence.ts'
import { thingWords } from './thing-words.ts'

interface RoomProps {
  title: string
  chapters: readonly KitchenChapter[]
  things: readonly KitchenThing[]
  /** The id of the thing whose form is open here, and the form; null where none is. */
  open: { id: string; form: ReactNode } | null
  onAdd: (chapter: KitchenChapter) => void
  onChange: (thing: KitchenThing) => void
  onRemove: (thing: KitchenThing) => Promise<void>
  /** A message about one of the things. */
  message: ReactNode
}

/** Things of the kitchen that are used together, each one sentence whose values open its entry, and one press a kind to add one. */
export function KitchenRoom({ chapters, things, open, ...props }: RoomProps) {
  const isOpen = (thing: KitchenThing) => open?.id === thing.id
  const known = things.some(isOpen)
  const [first] = chapters
  const tags = first?.kind === 'taster'
  const Row = tags ? Tag : Sentence
  return (
    <Section
      title={props.title}
      aside={
        <span className={styles.adds}>
          {chapters.map((chapter) => (
            <Button
              key={chapter.kind}
              kind="quiet"
              size="small"
              label={`Add ${chapter.one}`}
              onPress={() => props.onAdd(chapter)}
            >
              {`+ ${chapter.one}`}
            </Button>
          ))}
        </span>
      }
    >
      {things.length > 0 ? (
        <ul className={tags ? styles.tags : styles.things} aria-label={props.title}>
          {things.map((thing) => (
            <Fragment key={thing.id}>
              <li>
                <Row
                  thing={thing}
                  isOpen={isOpen(thing)}
                  onChange={() => props.onChange(thing)}
                  onRemove={() => props.onRemove(thing)}
                />
                {isOpen(thing) && !tags ? open?.form : null}
              </li>
            </Fragment>
          ))}
        </ul>
      ) : (
        <p className={styles.why}>{chapters.map(({ why }) => why).join(' ')}</p>
      )}
      {tags && things.length > 0 ? (
        <p className={styles.why}>Initials or a code, never a full name.</p>
      ) : null}
      {props.message}
      {open && (tags || !known) ? open.form : null}
    </Section>
  )
}

interface RowProps {
  thing: KitchenThing
  isOpen: boolean
  onChange: () => void
  onRemove: () => Promise<void>
}

function Sentence({ thing, isOpen, onChange }: RowProps) {
  const { temperature } = useManner()
  const { title } = thingWords(thing)
  return (
    <p className={styles.sentence}>
      <b>{title}</b>
      {thingSentence(thing, temperature).map((part, at) =>
        typeof part === 'string' ? (
          part
        ) : (
          <InlinePress
            // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one sentence keep their places
            key={at}
            label={`Change ${title}: ${part.value}`}
            expanded={isOpen}
            onPress={onChange}
          >
            {part.value}
          </InlinePress>
        ),
      )}
      .{thing.note ? <span className={styles.note}> {thing.note}</span> : null}
    </p>
  )
}

/** Who tastes, by their initials alone. */
function Tag({ thing, isOpen, onChange, onRemove }: RowProps) {
  const { title } = thingWords(thing)
  if (thing.kind === 'taster' && thing.erasedAt !== undefined)
    return (
      <span className={styles.why}>
        {title}, scores kept without a name{' '}
        <Button kind="quiet" size="small" label={`Remove ${title}`} onPress={onRemove}>
          Remove
        </Button>
      </span>
    )
  return (
    <InlinePress label={`Change ${title}`} expanded={isOpen} onPress={onChange}>
      {title}
    </InlinePress>
  )
}
