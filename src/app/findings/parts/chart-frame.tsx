import { type ReactNode, useState } from 'react'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from './chart-frame.module.css'

interface ChartFrameProps {
  title: string
  picture: ReactNode
  /** The same facts as a table, for every chart. */
  table: ReactNode
  /** What stands on the line of the title, such as a choice of tasters. */
  tools?: ReactNode
}

/** A chart with its title and the way to its table: nobody has to read a picture. */
export function ChartFrame({ title, picture, table, tools }: ChartFrameProps) {
  const [asTable, setAsTable] = useState(false)
  return (
    <figure className={styles.frame}>
      <figcaption className={styles.head}>
        <span className={styles.title}>{title}</span>
        <span className={styles.tools}>
          {tools}
          <Button kind="quiet" size="small" pressed={asTable} onPress={() => setAsTable(!asTable)}>
            As a table
          </Button>
        </span>
      </figcaption>
      {asTable ? table : <ErrorBoundary what="this picture">{picture}</ErrorBoundary>}
    </figure>
  )
}
