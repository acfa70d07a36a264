import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from './frame.module.css'

export type StartTrouble = 'no-store' | 'newer-database' | 'blocked' | 'damaged' | 'other'

const words: Record<StartTrouble, { title: string; text: string }> = {
  'no-store': {
    title: 'This browser keeps nothing',
    text: 'Evenhand keeps its notebook in the browser’s own database, and this browser offers none here. A private window or a strict setting is the usual cause: open the page in an ordinary window, or allow site data for this address.',
  },
  'newer-database': {
    title: 'The notebook was written by a newer version',
    text: 'A newer version of Evenhand has already opened this notebook. Nothing was changed. Reload to get the newer version, or open the address where you used it last.',
  },
  blocked: {
    title: 'Another window holds the notebook',
    text: 'Evenhand is open in another window or tab with another version. Close that window, then try again. Nothing was changed.',
  },
  damaged: {
    title: 'The notebook could not be read',
    text: 'A record in this browser’s database does not have the form it should have. Nothing was changed. Reload once; if it stays, restore your latest backup in another browser.',
  },
  other: {
    title: 'The notebook could not be opened',
    text: 'The browser refused to open its database. It may be short of room, or its storage may be locked. Nothing was changed. Free some room, then try again.',
  },
}

/** The page that stands instead of the app when there is no notebook to work on. */
export function StartFailure({ trouble, detail }: { trouble: StartTrouble; detail: string }) {
  const { title, text } = words[trouble]
  return (
    <main className={styles.lonePage}>
      <PageHeading>{title}</PageHeading>
      <p>{text}</p>
      {detail ? (
        <p className={styles.soft}>
          The browser says: <q>{detail}</q>
        </p>
      ) : null}
      <Button kind="primary" onPress={() => window.location.reload()}>
        Try again
      </Button>
    </main>
  )
}
