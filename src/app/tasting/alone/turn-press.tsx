import { Button } from '@/app/kit/press/button.tsx'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { useTableLog } from '@/app/tasting/use-table-log.ts'

/** In place of unsealing, where plates or cups were shuffled: what lay under them is said first. */
export function TurnPress() {
  const { session, state } = useTable()
  const log = useTableLog()
  return (
    <Button
      kind={state.mayUnseal.ok ? 'primary' : 'plain'}
      disabled={!state.mayUnseal.ok}
      onPress={() => log({ kind: 'plates-turned', about: { kind: 'session', id: session.id } })}
    >
      {session.dealt.tickets ? 'Turn the tickets over' : 'Turn the plates over'}
    </Button>
  )
}
