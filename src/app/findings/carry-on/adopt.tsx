import { useState } from 'react'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { formulaViews } from '@/core/formula/formula-views.ts'
import { resizeToFlour } from '@/core/formula/resize-formula.ts'
import { formulaAtLevel } from '@/core/trial/formula-at-level.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { decimalText, plainNumber } from '@/core/units/number-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'

interface AdoptProps {
  plan: Plan
  level: Level
  kind: 'primary' | 'plain'
}

/** The winner as a house formula, scaled to any amount of flour. */
export function Adopt({ plan, level, kind }: AdoptProps) {
  const [open, setOpen] = useState(false)
  const [flourGrams, setFlourGrams] = useState<number | null>(1000)
  const at = formulaAtLevel(plan, level)
  if (!at.ok) return null
  const views = formulaViews(resizeToFlour(at.formula, flourGrams ?? 1000))
  return (
    <>
      <Button kind={kind} onPress={() => setOpen(true)}>
        Adopt {levelText(level, plan.factor.unitOfMeasure)}
      </Button>
      <Dialog title="House formula" open={open} onClose={() => setOpen(false)}>
        <NumberField
          label="Flour"
          unit="g"
          value={flourGrams}
          onValue={setFlourGrams}
          check={(grams) =>
            grams > 0 && grams <= 1e6 ? undefined : 'Enter 1 g to 1,000 kg of flour.'
          }
        />
        <LedgerTable
          caption={`${plan.factor.name}: ${levelText(level, plan.factor.unitOfMeasure)}`}
          rowHead="Ingredient"
          columns={[
            { key: 'percent', head: 'Of flour', unit: '%' },
            { key: 'grams', head: 'Weight', unit: 'g' },
          ]}
          rows={[
            ...views.overall.map((row) => ({
              key: row.ingredientId,
              head: row.name,
              cells: [
                row.percent === null ? '–' : plainNumber(Math.round(row.percent * 100) / 100),
                decimalText(row.grams, row.grams < 10 ? 2 : 1),
              ],
            })),
            {
              key: 'dough',
              head: 'Dough',
              cells: ['', decimalText(views.doughGrams, 0)],
              quiet: true,
            },
          ]}
        />
      </Dialog>
    </>
  )
}
