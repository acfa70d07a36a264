import type { Summary } from '@/notebook/summary-record.ts'
import styles from './home.module.css'

interface FoundInProps {
  summary: Pick<Summary, 'question' | 'factorName' | 'answer' | 'flours' | 'notes'>
  search: string
}

/** Where a search found a trial, when neither its question nor its answer shows the words: the flour, or the line of the notes. */
export function FoundIn({ summary, search }: FoundInProps) {
  const { question, answer = '', factorName, flours = [], notes = '' } = summary
  const shown = `${question} ${answer}`.toLowerCase()
  const words = search.toLowerCase().split(/\s+/).filter(Boolean)
  const unseen = words.filter((word) => !shown.includes(word))
  if (unseen.length === 0) return null
  const has = (text: string) => unseen.some((word) => text.toLowerCase().includes(word))
  const places = [
    ...(has(factorName) ? [{ where: 'Factor', text: factorName }] : []),
    ...flours.filter(has).map((text) => ({ where: 'Flour', text })),
    ...notes
      .split('\n')
      .filter(has)
      .slice(0, 2)
      .map((text) => ({ where: 'Note', text })),
  ]
  return places.map(({ where, text }) => (
    <p key={`${where} ${text}`} className={styles.soft}>
      {where}: <Marked text={text} words={unseen} />
    </p>
  ))
}

/** A text with the words that were looked for underlined. */
function Marked({ text, words }: { text: string; words: readonly string[] }) {
  const low = text.toLowerCase()
  const [first] = words
    .map((word) => ({ at: low.indexOf(word), word }))
    .filter(({ at }) => at >= 0)
    .toSorted((one, other) => one.at - other.at)
  if (!first) return text
  const end = first.at + first.word.length
  return (
    <>
      {text.slice(0, first.at)}
      <mark className={styles.hit}>{text.slice(first.at, end)}</mark>
      <Marked text={text.slice(end)} words={words} />
    </>
  )
}
