import type { ReactNode } from 'react'
import unseen from '@/app/kit/look/unseen.module.css'
import { InFold } from '@/app/kit/page/in-fold.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import styles from './asked-row.module.css'
import { type PlanPartId, partTitle } from './part-names.ts'
import { usePlanActions, usePlanPage } from './plan-page-context.ts'
import { PlanPart } from './plan-part.tsx'

interface AskedRowProps {
  part: PlanPartId
  children: ReactNode
}

/** What a value of a sentence opens under it: its fields and their help, raised, and the press that shuts it again. */
export function AskedRow({ part, children }: AskedRowProps) {
  const open = usePlanPage((page) => page.opened.includes(part))
  const { turn } = usePlanActions()
  if (!open) return null
  return (
    <section className={styles.row} aria-label={partTitle(part)} data-plan-part={part}>
      <h2 className={unseen.unseen} {...landing}>
        {partTitle(part)}
      </h2>
      <InFold value={true}>
        <PlanPart what={partTitle(part).toLocaleLowerCase('en')}>{children}</PlanPart>
      </InFold>
      <div className={styles.keep}>
        <Button
          kind="primary"
          label={`Keep and shut: ${partTitle(part)}`}
          onPress={() => turn(part, false)}
        >
          Keep
        </Button>
      </div>
    </section>
  )
}
