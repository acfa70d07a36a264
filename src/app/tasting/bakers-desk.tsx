import { Button } from '@/app/kit/button.tsx'
import { LinkButton } from '@/app/kit/link-button.tsx'
import { Section } from '@/app/kit/section.tsx'
import { CloseEarly } from './close-early.tsx'
import { TasterList } from './taster-list.tsx'
import styles from './tasting.module.css'
import { useTable } from './tasting-context.ts'
import { useTableLog } from './use-table-log.ts'

/** What the baker sees to: who came, whose ballots are missing, closing early with a reason, and the unsealing. */
export function BakersDesk() {
  const { whole, session, state } = useTable()
  const log = useTableLog()
  const about = { kind: 'session' as const, id: session.id }
  return (
    <Section title="The seal" aside={`Session ${session.number} of ${session.plannedSessions}`}>
      <p>{sealText(state)}</p>
      {state.seal === 'unsealed' ? (
        <LinkButton href={`#/trial/${whole.trial.id}/findings`} kind="primary">
          To the findings
        </LinkButton>
      ) : (
        <>
          <TasterList />
          <div className={styles.actions}>
            <Button
              kind={state.mayUnseal.ok ? 'primary' : 'plain'}
              disabled={!state.mayUnseal.ok}
              onPress={() => log({ kind: 'unsealed', about })}
            >
              Unseal the codes
            </Button>
            {state.begun && !state.mayUnseal.ok ? <CloseEarly /> : null}
          </div>
        </>
      )}
    </Section>
  )
}

function sealText(state: ReturnType<typeof useTable>['state']): string {
  const missing = state.missing.length
  switch (state.seal) {
    case 'not-begun':
      return 'The first sealed ballot seals the codes; they open when the last one is in.'
    case 'unsealed':
      return 'The codes are open: the rail shows which was which.'
    case 'closed':
      return `Closed before every ballot was in: ${state.closedBecause ?? ''}. The codes may be unsealed.`
    default:
      return missing === 0
        ? 'Every ballot is in. The codes may be unsealed.'
        : `Sealed. ${missing} ${missing === 1 ? 'ballot is' : 'ballots are'} still missing.`
  }
}
