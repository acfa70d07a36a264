import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { chartSvg } from '@/core/report/chart-svg.ts'
import { columnLooks, headsOnOneLine } from '@/core/report/column-look.ts'
import { pairsSvg } from '@/core/report/pairs-svg.ts'
import type { ReportBlock, ReportDocument, TableBlock } from '@/core/report/report-block.ts'
import { pictureStyle } from '@/core/report/report-style.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import styles from './report.module.css'
import { SvgPicture } from './svg-picture.tsx'

/** The report as it stands in its file, on a sheet of paper. */
export function ReportView({ document }: { document: ReportDocument }) {
  return (
    <article className={styles.sheet}>
      <style>{pictureStyle}</style>
      <h2 className={styles.title}>{document.title}</h2>
      {document.note === '' ? null : <p className={styles.note}>{document.note}</p>}
      {document.sections.map((section) => (
        <section
          key={section.id}
          className={styles.section}
          aria-labelledby={`report-${section.id}`}
        >
          <h3 id={`report-${section.id}`}>{section.title}</h3>
          <ErrorBoundary what={`“${section.title}”`} of={document}>
            {section.blocks.map((block, index) => (
              <Block
                // biome-ignore lint/suspicious/noArrayIndexKey: the blocks of a section have no other name and never move
                key={index}
                block={block}
                id={`${section.id}-${index}`}
              />
            ))}
          </ErrorBoundary>
        </section>
      ))}
      <p className={styles.made}>{document.madeBy}</p>
    </article>
  )
}

function Block({ block, id }: { block: ReportBlock; id: string }) {
  switch (block.kind) {
    case 'text':
      return <p>{boundUnits(block.text)}</p>
    case 'answer':
      return (
        <p className={styles.answer}>
          {boundUnits(block.shown)} <span className={styles.known}>{boundUnits(block.known)}</span>
        </p>
      )
    case 'heading':
      return <h4>{block.text}</h4>
    case 'list':
      return (
        <ul className={styles.list}>
          {block.items.map((item) => (
            <li key={item}>{boundUnits(item)}</li>
          ))}
        </ul>
      )
    case 'facts':
      return (
        <dl className={styles.facts}>
          {block.rows.map(({ term, text }) => (
            <Fact key={term} term={term} text={text} />
          ))}
        </dl>
      )
    case 'table':
      return <Table block={block} />
    case 'chart':
      return <Picture svg={chartSvg(block, id)} title={block.title} />
    case 'pairs':
      return <Picture svg={pairsSvg(block)} title={block.title} />
  }
}

function Fact({ term, text }: { term: string; text: string }) {
  return (
    <>
      <dt>{term}</dt>
      <dd>{boundUnits(text)}</dd>
    </>
  )
}

function Picture({ svg, title }: { svg: string; title: string }) {
  return (
    <figure className={styles.picture}>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for controls */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard */}
      <div role="group" className={styles.scroll} aria-label={title} tabIndex={0}>
        <SvgPicture svg={svg} />
      </div>
      <figcaption>{title}</figcaption>
    </figure>
  )
}

/** Longer tables may break over pages, between rows. */
const longestUnbroken = 14

function Table({ block }: { block: TableBlock }) {
  const [first, ...others] = block.head
  const [, ...looks] = columnLooks(block)
  const look = [
    block.rows.length <= longestUnbroken ? styles.short : '',
    headsOnOneLine(block) ? styles.line : '',
  ]
  return (
    <div className={look.filter(Boolean).join(' ')}>
      <LedgerTable
        caption={block.caption}
        rowHead={first}
        columns={others.map((head, index) => ({
          key: `${index} ${head}`,
          head,
          align: block.figures[index + 1] ? 'figure' : 'text',
        }))}
        rows={block.rows.map(([head, ...cells], index) => ({
          key: `${index} ${head}`,
          head,
          cells: cells.map((text, at) => {
            const kind = looks[at]
            return kind === 'figure' ? text : <Words key={text} text={text} few={kind === 'few'} />
          }),
        }))}
      />
    </div>
  )
}

function Words({ text, few }: { text: string; few: boolean }) {
  return <span className={few ? styles.few : styles.words}>{boundUnits(text)}</span>
}
