import { useEffect, useRef } from 'react'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { Fold } from '@/app/kit/page/fold.tsx'
import { SideBySide } from '@/app/kit/rail/side-by-side.tsx'
import { KeptPicture } from '@/app/services/kept-picture.tsx'
import { chartSvg } from '@/core/report/chart-svg.ts'
import { columnLooks, headsOnOneLine } from '@/core/report/column-look.ts'
import { onScreen } from '@/core/report/on-screen.ts'
import { pairsSvg } from '@/core/report/pairs-svg.ts'
import type {
  ReportBlock,
  ReportDocument,
  ReportSection,
  TableBlock,
} from '@/core/report/report-block.ts'
import { pictureStyle } from '@/core/report/report-style.ts'
import { runningHead } from '@/core/report/running-head.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import styles from './report.module.css'

interface ReportViewProps {
  document: ReportDocument
  /** Whether the appendix is open, and what a press on it asks for. */
  appendix: boolean
  onAppendix: (open: boolean) => void
}

/** The report as it stands in its file: the two pages on a sheet of paper, the appendix a fold under them. */
export function ReportView({ document, appendix, onAppendix }: ReportViewProps) {
  return (
    <>
      <article className={styles.sheet}>
        <style>{pictureStyle}</style>
        <style>{runningHead(document.title)}</style>
        <h2 className={styles.title}>{document.title}</h2>
        {document.note === '' ? null : <p className={styles.note}>{document.note}</p>}
        {document.pages.map((section) => (
          <Part key={section.id} section={section} document={document} />
        ))}
      </article>
      <div className={appendix ? styles.appendix : styles.closed}>
        <Fold
          name="Appendix"
          result={`${listText(
            document.appendix
              .slice(0, 3)
              .map(({ title }, at) => (at === 0 ? title : midSentence(title))),
            'and',
          )}, and ${document.appendix.length - 3} parts more`}
          open={appendix}
          onToggle={onAppendix}
        >
          {document.appendix.map((section) => (
            <Part key={section.id} section={section} document={document} />
          ))}
          <p className={styles.made}>{document.madeBy}</p>
        </Fold>
      </div>
    </>
  )
}

interface PartProps {
  section: ReportSection
  document: ReportDocument
}

function Part({ section, document }: PartProps) {
  const headId = `report-${section.id}`
  return (
    <section className={styles.section} aria-labelledby={headId}>
      <h3 id={headId}>{section.title}</h3>
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
  )
}

function Block({ block, id }: { block: ReportBlock; id: string }) {
  switch (block.kind) {
    case 'text':
      return <p>{boundUnits(block.text)}</p>
    case 'strong':
      return <p className={styles.strong}>{boundUnits(block.text)}</p>
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
      return <Picture svg={chartSvg(onScreen(block), id)} title={block.title} />
    case 'photos':
      return <SideBySide block={block} Picture={KeptPicture} />
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

/** A chart of the report, drawn as plain SVG by the report itself: the screen shows exactly what the file holds. */
export function SvgPicture({ svg }: { svg: string }) {
  const ref = useRef<HTMLDivElement>(null)
  useEffect(() => {
    const parsed = new DOMParser().parseFromString(svg, 'text/html').body.firstElementChild
    if (parsed) ref.current?.replaceChildren(parsed)
  }, [svg])
  return <div ref={ref} />
}
