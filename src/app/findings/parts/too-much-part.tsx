import styles from '@/app/findings/findings.module.css'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { dropText, sharesText } from '@/core/wording/findings/just-about-right-text.ts'
import { responseInWords } from '@/core/wording/findings/named-in-findings.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { ChartFrame } from './chart-frame.tsx'
import { Method } from './method.tsx'
import { PartFold } from './part-fold.tsx'
import shares from './too-much-part.module.css'

/** Too little, right and too much: the shares as a bar, and what each side cost this response. */
export function TooMuchPart({ findings, index }: { findings: FindingsDocument; index: number }) {
  const found = findings.responses[index]
  if (!found || found.justAboutRight.length === 0) return null
  return (
    <PartFold
      title="Too much or too little"
      result={found.justAboutRight
        .map((each) => `${responseInWords(each.responseId, findings)}: ${sharesText(each)}.`)
        .join(' ')}
      index={index}
      name={found.name}
    >
      {found.justAboutRight.map((each) => (
        <div key={each.responseId} className={styles.stack}>
          <ChartFrame
            title={responseInWords(each.responseId, findings)}
            picture={
              <div className={shares.bar} role="img" aria-label={sharesText(each)}>
                {(['below', 'right', 'above'] as const).map((side) => (
                  <span
                    key={side}
                    className={`${shares.part} ${shares[side]}`}
                    style={{ flexGrow: each[side] }}
                  />
                ))}
              </div>
            }
            table={
              <LedgerTable
                caption={`${responseInWords(each.responseId, findings)}: shares of all answers`}
                hideCaption
                rowHead="Answer"
                columns={[{ key: 'share', head: 'Share', unit: '%' }]}
                rows={(['below', 'right', 'above'] as const).map((side) => ({
                  key: side,
                  head: words[side],
                  cells: [decimalText(each[side] * 100, 0)],
                }))}
              />
            }
          />
          <ul className={styles.plainList}>
            {each.drops.map((drop) => (
              <li key={drop.side}>{boundUnits(dropText(drop, found.name))}</li>
            ))}
          </ul>
        </div>
      ))}
      <Method what="the shares and drops were" topics={['justAboutRight', 'meanDrop']} />
    </PartFold>
  )
}

const words = { below: 'too little', right: 'just about right', above: 'too much' }
