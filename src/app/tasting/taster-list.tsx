import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'
import type { TasterState } from '@/core/tasting/tasting-state.ts'
import { bakerAmong } from '@/core/trial/baker-tastes.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { useTable } from './tasting-context.ts'
import { useTableLog } from './use-table-log.ts'

const presenceText: Record<TasterState['presence'], string> = {
  awaited: 'awaited',
  present: 'at the table',
  declined: 'does not taste',
  left: 'has left',
}

/** Everybody who may taste, with how many of their ballots are in; who did not come or had to go is marked, not forgotten. */
export function TasterList() {
  const { whole, session, state } = useTable()
  const baker = bakerAmong(planOfSession(whole, session))
  const open = state.seal === 'not-begun' || state.seal === 'sealed'
  return (
    <LedgerTable
      caption="Ballots by taster"
      hideCaption
      rowHead="Taster"
      columns={[
        { key: 'presence', head: 'Here', align: 'text' },
        { key: 'sealed', head: 'Sealed', align: 'figure' },
        { key: 'change', head: 'Mark', align: 'text' },
      ]}
      rows={state.tasters.map((taster) => ({
        key: taster.tasterId,
        head:
          taster.tasterId === baker?.tasterId
            ? `${tasterName(taster.tasterId, whole.kitchen)}, who bakes`
            : tasterName(taster.tasterId, whole.kitchen),
        cells: [
          `${presenceText[taster.presence]}${taster.knows ? ', not blind' : ''}`,
          `${taster.answered} / ${taster.expected}`,
          open ? <PresenceButton key="presence" taster={taster} /> : '',
        ],
      }))}
    />
  )
}

function PresenceButton({ taster }: { taster: TasterState }) {
  const log = useTableLog()
  const about = { kind: 'taster' as const, id: taster.tasterId }
  const here = taster.presence === 'present'
  if (taster.presence === 'declined' || taster.presence === 'left')
    return <Mark onPress={() => log({ kind: 'present', about })}>Is here</Mark>
  return (
    <Mark onPress={() => log({ kind: here ? 'left' : 'declined', about })}>
      {here ? 'Has left' : 'Does not taste'}
    </Mark>
  )
}

/** Slight and on one line, so that the row of a taster fits a phone. */
function Mark({ children, onPress }: { children: string; onPress: () => unknown }) {
  return (
    <Button kind="quiet" size="small" onPress={onPress}>
      <span className={styles.oneLine}>{children}</span>
    </Button>
  )
}
