import { useState } from 'react'
import { mostScannable, ScanCode } from '@/app/kit/page/scan-code.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { slipsProtect } from '@/core/wording/tasting/slip-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import own from './slips.module.css'
import { useSlips } from './use-slips.ts'

/** A code for each taster, or one on the table for all: it opens the ballot on their own phone, where nothing is installed. */
export function HandOut() {
  const slips = useSlips()
  const { whole, state } = useTable()
  const [shown, setShown] = useState<{ name: string; link: string } | null>(null)
  if (!slips) return null
  const tasters = state.tasters.filter(
    ({ presence, complete }) => !complete && presence !== 'declined' && presence !== 'left',
  )
  const show = async (tasterId: string | null) => {
    const name = tasterId === null ? 'everybody' : tasterName(tasterId, whole.kitchen)
    setShown({ name, link: await slips.handOut(tasterId) })
  }
  return (
    <div className={styles.stack}>
      <div className={styles.seats}>
        {tasters.map(({ tasterId }) => (
          <Button key={tasterId} onPress={() => show(tasterId)}>
            Code for {tasterName(tasterId, whole.kitchen)}
          </Button>
        ))}
        {tasters.length > 1 ? <Button onPress={() => show(null)}>One code for all</Button> : null}
      </div>
      {shown ? <Shown key={shown.link} {...shown} /> : null}
      <p className={styles.quiet}>{slipsProtect}</p>
    </div>
  )
}

function Shown({ name, link }: { name: string; link: string }) {
  const [said, setSaid] = useState('')
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link)
      setSaid('Copied.')
    } catch {
      // Some browsers keep the clipboard from a page that is not served securely: the link stands there to be marked.
      setSaid('This browser does not copy by a press; mark the link below.')
    }
  }
  return (
    <div className={styles.stack}>
      <p className={styles.lead}>
        {name === 'everybody' ? 'On the table for everybody' : `${name} scans this`}
      </p>
      {link.length <= mostScannable.address ? (
        <ScanCode text={link} label={`Ballot for ${name}, to be scanned`} />
      ) : (
        <p>With so many codes and questions the code is too dense to scan. Send the link.</p>
      )}
      <div className={styles.actions}>
        <Button onPress={copy}>Copy the link for {name}</Button>
      </div>
      <p role="status" className={styles.quiet}>
        {said}
      </p>
      <p className={own.link} data-slip-link>
        {link}
      </p>
    </div>
  )
}
