import { useEffect, useState } from 'react'
import { TextArea } from '@/app/kit/field/text-area.tsx'
import { Fold } from '@/app/kit/page/fold.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { guardPresses } from '@/app/kit/press/guard-presses.ts'
import { markOpenTable } from '@/app/services/open-tables.ts'
import { useServices } from '@/app/services/services.ts'
import { hubSees, hubTroubleText, threeWays } from '@/core/wording/table/table-text.ts'
import { keepOwnTable } from '@/exchange/open-table.ts'
import { readHubCode } from '@/table/hub-code.ts'
import { openTable } from '@/table/hub-desk.ts'
import { canSeal } from '@/table/part-keys.ts'
import { hubKey } from './hub-kept.ts'
import styles from './table.module.css'
import { connect, reachFromHere, tableServices } from './table-services.ts'

/** Opens a table for a trial: the hub's link, whether it can be reached, and what guests will and will not have. */
export function OpenForm({ trialId }: { trialId: string }) {
  const services = useServices()
  const { notebook, now } = services
  const [text, setText] = useState('')
  const [problem, setProblem] = useState<string>()
  useEffect(() => {
    let gone = false
    void notebook.draft(hubKey).then((kept) => {
      if (!gone && kept?.link) setText((typed) => (typed === '' ? (kept.link ?? '') : typed))
    })
    return () => {
      gone = true
    }
  }, [notebook])
  const open = async () => {
    const read = readHubCode(text)
    if (!read.ok) return setProblem(hubTroubleText(read.reason))
    const reach = reachFromHere(read.code.page)
    if (!reach.ok) return setProblem(hubTroubleText(reach.reason))
    const asked = await openTable(connect, read.code, Math.floor(now() / 1000)).catch(() => ({
      ...{ ok: false as const, reason: 'no-answer' as const },
    }))
    if (!asked.ok) return setProblem(hubTroubleText(asked.reason))
    await notebook.keepDraft(hubKey, { link: text.replaceAll(/\s/g, '') })
    await keepOwnTable(tableServices(services), trialId, asked.ticket, read.code)
    await markOpenTable(notebook, `own/${trialId}`, '')
  }
  return (
    <div ref={guardPresses} className={styles.page}>
      <PageHeading>Open a table</PageHeading>
      <p className={styles.lead}>
        Several devices work this day together: one at the bench, one at the oven, one with the key,
        each taster with their own phone.{' '}
        <span className={styles.soft}>
          Each sees what its part may see, and keeps working when it loses the others.
        </span>
      </p>
      <TextArea
        label="Link of the hub"
        hint="A computer in the kitchen carries the messages: start it there with “npm run hub”, and paste the link it prints."
        rows={3}
        value={text}
        onValue={(next) => {
          setText(next)
          setProblem(undefined)
        }}
        maxLength={2000}
        problem={problem}
      />
      <div className={styles.actions}>
        <Button kind="primary" onPress={open}>
          Open the table
        </Button>
      </div>
      <p className={styles.soft}>{hubSees}</p>
      <Ways />
    </div>
  )
}

/** The three ways in which guests can come, with what is missing in each, said before anybody scans. */
export function Ways() {
  return (
    <Fold
      name="How guests’ phones come in"
      result={
        canSeal()
          ? 'three ways, and what each lacks'
          : 'this page came by plain http: nothing can be sealed'
      }
    >
      <dl className={styles.ways}>
        {threeWays.map(({ name, says }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
    </Fold>
  )
}
