import { type ReactNode, useEffect, useMemo } from 'react'
import styles from '@/app/findings/findings.module.css'
import { FindingsPage } from '@/app/findings/findings-page.tsx'
import { sourceOfTable } from '@/app/findings/findings-source.ts'
import { fetchCharts } from '@/app/findings/parts/lazy-charts.ts'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { LevelRail } from '@/app/kit/rail/level-rail.tsx'
import { axisLevels } from '@/core/figure/chart-of-response.ts'
import { csvGrid } from '@/core/findings/table/csv-grid.ts'
import { describedTable } from '@/core/findings/table/described-table.ts'
import { scoresOfCsv } from '@/core/findings/table/scores-of-csv.ts'
import { replicatedText } from '@/core/wording/files/csv-trouble-text.ts'
import { optionsOf, type TableChoices, toldIn, withMeaning } from './table-choices.ts'
import { TableFindings } from './table-findings.tsx'
import { TablePreview } from './table-preview.tsx'
import { TableTold } from './table-told.tsx'
import { TableTroubles } from './table-troubles.tsx'

interface TablePageProps {
  name: string
  text: string
  choices: TableChoices
  onChoices: (choices: TableChoices) => void
  onClose: () => void
  /** The way to another table. */
  another: ReactNode
  /** True where the table is too long to survive a reload. */
  unkept: boolean
}

/** One table from elsewhere: first what its columns mean, then what its scores support. */
export function TablePage(props: TablePageProps) {
  const { name, text, choices, onChoices, onClose, another, unkept } = props
  const grid = useMemo(() => csvGrid(text), [text])
  const reading = JSON.stringify(optionsOf(choices))
  const read = useMemo(() => scoresOfCsv(text, JSON.parse(reading)), [text, reading])
  const told = JSON.stringify(
    toldIn(choices, read.ok ? read.scores.responses.map(({ id }) => id) : []),
  )
  const scores = useMemo(
    () => (read.ok ? describedTable(read.scores, JSON.parse(told)) : null),
    [read, told],
  )
  const of = useMemo(() => (scores ? { scores, seed: sourceOfTable.seed } : null), [scores])
  useEffect(fetchCharts, [])
  const choose = (key: string, chosen: string) => onChoices({ ...choices, [key]: chosen })

  if (scores && of && choices.shown === 'yes')
    return (
      <>
        <div className={styles.tools}>
          <p className={styles.words}>{name}</p>
          <Button onPress={() => choose('shown', '')}>Change the columns</Button>
        </div>
        <div className={styles.railOfTable}>
          <LevelRail
            levels={axisLevels(scores.levels)}
            factorName={scores.factor.name}
            unitOfMeasure={scores.factor.unitOfMeasure}
          />
        </div>
        {scores.replicated ? <p className={styles.words}>{replicatedText}</p> : null}
        <FindingsPage source={sourceOfTable} of={of} nothing={null} />
      </>
    )
  const left = new Set(read.columns.map(({ heading }) => heading))
  return (
    <div className={styles.page}>
      <div className={styles.tools}>
        <p className={styles.words}>{name}</p>
        {another}
        <Button kind="quiet" onPress={onClose}>
          Put it away
        </Button>
      </div>
      {unkept ? (
        <Notice kind="know">
          This table is too long to be kept: after a reload it has to be chosen again.
        </Notice>
      ) : null}
      {grid.header.length > 0 ? (
        <TablePreview
          grid={grid}
          columns={read.columns}
          turned={choices.tidyAs ? grid.header.filter((heading) => !left.has(heading)) : []}
          onMeaning={(column, meaning) => onChoices(withMeaning(choices, column, meaning))}
        />
      ) : null}
      {choices.tidyAs ? (
        <div className={styles.tools}>
          <p>Its columns of levels are read as rows of {choices.tidyAs}.</p>
          <Button kind="quiet" onPress={() => choose('tidyAs', '')}>
            Leave it as it was
          </Button>
        </div>
      ) : null}
      <TableFindings choices={choices} onUndo={(key) => choose(key, '')} />
      {read.ok ? (
        <>
          <TableTold choices={choices} scores={read.scores} onChoice={choose} />
          <div>
            <Button kind="primary" onPress={() => choose('shown', 'yes')}>
              Show what it supports
            </Button>
          </div>
        </>
      ) : (
        <TableTroubles
          troubles={read.troubles}
          wide={read.wide}
          onTurn={(response) => choose('tidyAs', response)}
          onAnswer={choose}
          onMeaning={(column, meaning) => onChoices(withMeaning(choices, column, meaning))}
        />
      )}
    </div>
  )
}
