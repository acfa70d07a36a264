import { useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { pieceName } from '@/app/bench/line-name.ts'
import { PieceLog } from '@/app/bench/log/piece-log.tsx'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { bakes } from '@/core/session/bakes.ts'
import { piecesOfBatch } from '@/core/session/line.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import type { EntryProps } from './entry-props.ts'

/** The pieces of the dough in front: which are in the oven, how long they baked; a press opens one to log about it. */
export function PiecesEntry({ unit }: EntryProps) {
  const { covered, session, plan, events } = useBench()
  const [openId, setOpenId] = useState<string | null>(unit.kind === 'piece' ? unit.id : null)
  const batchId =
    unit.kind === 'batch'
      ? unit.id
      : (session.pieces.find((piece) => piece.id === unit.id)?.batchId ?? unit.id)
  const pieces = piecesOfBatch(session, batchId)
  const baked = new Map(bakes(session, events).map((bake) => [bake.pieceId, bake]))
  if (openId !== null) return <PieceLog pieceId={openId} onBack={() => setOpenId(null)} />
  return (
    <div className={styles.entry}>
      <LedgerTable
        caption="Pieces of this dough"
        rowHead="Piece"
        columns={[
          { key: 'oven', head: 'Oven', align: 'text' },
          { key: 'open', head: 'Log', align: 'text' },
        ]}
        rows={pieces.map((piece) => {
          const bake = baked.get(piece.id)
          return {
            key: piece.id,
            head: pieceName(session, covered ? { levels: [] } : plan, piece.id).text,
            cells: [
              ovenText(bake),
              <Button key="open" onPress={() => setOpenId(piece.id)}>
                Open
              </Button>,
            ],
          }
        })}
      />
    </div>
  )
}

function ovenText(bake: ReturnType<typeof bakes>[number] | undefined): string {
  if (!bake || bake.inAt === null) return 'not yet'
  if (bake.outAt === null || bake.bakeSeconds === null) return 'in the oven'
  return durationText(bake.bakeSeconds)
}
