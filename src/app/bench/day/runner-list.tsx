import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { letterOfLevel } from '@/core/session/line.ts'
import { servingDues } from '@/core/session/serving-dues.ts'
import { servingDueText } from '@/core/wording/bench/serving-due-text.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'

/** For whoever carries hot pieces out and may know: which goes next under which code, when it is due, and the stamp. */
export function RunnerList() {
  const { session, plan, events, log } = useBench()
  const dues = servingDues(session, plan, events)
  const next = dues.find(({ servedAt }) => servedAt === null)
  const time = (at: number) => clockTime(at, session.zone)
  const letterOf = (pieceId: string) => {
    const piece = session.pieces.find(({ id }) => id === pieceId)
    return piece ? (letterOfLevel(session, piece.levelId) ?? '') : ''
  }
  return (
    <>
      {next ? (
        <Button
          size="bench"
          kind="primary"
          means={`served/${next.id}`}
          onPress={() => log({ kind: 'served', about: { kind: 'serving', id: next.id } })}
        >
          {letterOf(next.pieceId)} goes out as {next.code}
        </Button>
      ) : (
        <p className={styles.then}>Everything is served.</p>
      )}
      <p className={styles.then}>{plan.servingRule}</p>
      <LedgerTable
        caption="What goes out, in its turn"
        rowHead="Code"
        columns={[
          { key: 'letter', head: 'Dough', align: 'text' },
          { key: 'flight', head: 'Flight', align: 'text' },
          { key: 'due', head: 'To the table', align: 'text' },
        ]}
        rows={dues.map((due) => ({
          key: due.id,
          head: due.code,
          cells: [
            letterOf(due.pieceId),
            due.flight === null ? 'warm-up' : String(due.flight),
            servingDueText(due, time),
          ],
        }))}
      />
    </>
  )
}
