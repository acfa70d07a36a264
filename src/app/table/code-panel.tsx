import { useEffect, useState } from 'react'
import { mostScannable, ScanCode } from '@/app/kit/page/scan-code.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { takeBack } from '@/exchange/close-table.ts'
import { invite, linkOf } from '@/exchange/open-table.ts'
import type { OwnTable } from '@/exchange/table-store.ts'
import type { TableSeat } from './seats-of-table.ts'
import styles from './table.module.css'
import { tableServices } from './table-services.ts'

interface CodePanelProps {
  own: OwnTable
  name: string
  seat: TableSeat
  sealed: boolean
}

const deeds: Readonly<Record<TableSeat['part'], string>> = {
  bench: 'works the doughs with you',
  oven: 'works the oven and hears of letters',
  key: 'plates the pieces and does not taste',
  taster: 'tastes, on their own phone',
  watch: 'only looks on',
}

/** The code that brings a device to a part, made when it is first shown; a new one for a lost phone, and taking it back. */
export function CodePanel({ own, name, seat, sealed }: CodePanelProps) {
  const services = useServices()
  const given = tableServices(services)
  const watch = useThrown()
  const [said, setSaid] = useState('')
  const { part, tasterId, invited } = seat
  const { trialId } = own
  const make = () => invite(given, trialId, { part, tasterId, sealed })
  const wanting = invited === null && said === ''
  // biome-ignore lint/correctness/useExhaustiveDependencies: made once where there is none
  useEffect(() => {
    if (wanting) watch(make())
  }, [wanting])
  const back = async (another: boolean) => {
    if (!invited) return
    const { atHub } = await takeBack(given, own, invited.login.name)
    setSaid(
      atHub
        ? 'The old code is taken back: its device is cut off.'
        : 'The old code is taken back here: nothing of it is taken in any more. The hub was not reached; there it runs out by itself.',
    )
    if (another) await make()
  }
  const link = invited ? linkOf(own, invited) : null
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link ?? '')
      setSaid('Copied.')
    } catch {
      // Some browsers keep the clipboard from a page that is not served securely: the link stands there to be marked.
      setSaid('This browser does not copy by a press; mark the link below.')
    }
  }
  return (
    <Section title={name} aside={link ? 'scan to take the part' : ''}>
      <div className={styles.code}>
        {link && link.length <= mostScannable.address ? (
          <ScanCode text={link} label={`Code of ${name}, to be scanned`} />
        ) : null}
        {link ? (
          <p>Whoever scans this {deeds[part]}. For one device alone: show it to nobody else.</p>
        ) : (
          <p>No code holds for this part.</p>
        )}
        <p role="status">{said}</p>
        <div className={styles.actions}>
          {link ? (
            <>
              <Button onPress={copy}>Copy the link</Button>
              <Button onPress={() => back(true)}>New code, the old one ends</Button>
              <Button kind="quiet" onPress={() => back(false)}>
                Take it back
              </Button>
            </>
          ) : (
            <Button onPress={make}>Make a code</Button>
          )}
        </div>
        {link ? (
          <p className={styles.link} data-join-link>
            {link}
          </p>
        ) : null}
      </div>
    </Section>
  )
}
