import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import taken from '@/app/kit/taken/taken.module.css'
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

/** What is many, behind one press: each with what it is, one of them to begin from. */
export function ListToTake({ title, note, list, onTake, onClose }: ListToTakeProps) {
  return (
    <Dialog title={title} open onClose={onClose}>
      {note === undefined ? null : <p className={styles.soft}>{note}</p>}
      <ul className={taken.read}>
        {list.map(({ key, name, said }) => (
          <li key={key}>
            <span className={styles.toTake}>
              <b>{name}</b> <span className={styles.soft}>{said}</span>
            </span>
            <Button size="small" label={`Begin from it: ${name}`} onPress={() => onTake(key)}>
              Begin from it
            </Button>
          </li>
        ))}
      </ul>
    </Dialog>
  )
}
