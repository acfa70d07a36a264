import { Dialog } from '@/app/kit/page/dialog.tsx'
import { ChoiceRow } from './choice-row.tsx'
import styles from './start-place.module.css'

export interface ToTake {
  key: string
  name: string
  said: string
}

interface ListToTakeProps {
  title: string
  note?: string
  list: readonly ToTake[]
  onTake: (key: string) => void
  onClose: () => void
}

/** What is many, behind one press: each with what it is, a press that begins from it. */
export function ListToTake({ title, note, list, onTake, onClose }: ListToTakeProps) {
  return (
    <Dialog title={title} open onClose={onClose}>
      {note === undefined ? null : <p className={styles.soft}>{note}</p>}
      <ul className={styles.toTake}>
        {list.map(({ key, name, said }) => (
          <li key={key}>
            <ChoiceRow name={name} hint={said} onPress={() => onTake(key)} />
          </li>
        ))}
      </ul>
    </Dialog>
  )
}
