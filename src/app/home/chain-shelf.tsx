import { useLiveQuery } from 'dexie-react-hooks'
import { useContext } from 'react'
import { Link } from 'wouter'
import { Fold } from '@/app/kit/page/fold.tsx'
import { LessonsContext } from '@/app/kit/page/lessons-context.ts'
import { Section } from '@/app/kit/page/section.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useServices } from '@/app/services/services.ts'
import { withoutCovered } from '@/core/lesson/covered-trials.ts'
import { followsText } from '@/core/wording/findings/next-step-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import type { ChainLink } from '@/notebook/chains.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import styles from './chain-shelf.module.css'
import { stageWords } from './stage-words.ts'

/** The lines of questions: trials that carried one another on, each with its answer; nothing while there are none. */
export function ChainShelf() {
  const { notebook } = useServices()
  const lessons = useContext(LessonsContext)
  const found = useLiveQuery(() => notebook.chains(), [notebook])
  const chains = found?.map((chain) =>
    chain.map((link) => ({ ...link, line: withoutCovered(link.line, lessons) })),
  )
  if (!chains || chains.length === 0) return null
  return (
    <Section title="Lines of questions">
      {chains.map((chain, at) => {
        const [first] = chain
        return first ? (
          <Fold
            key={first.line.trialId}
            level={3}
            name={first.line.question}
            result={`${asSentenceStart(countText(chain.length, 'question'))}. ${lastAnswer(chain)}`}
            startsOpen={at === 0}
          >
            <ol className={styles.chain}>
              {chain.map((link) => (
                <Question key={link.line.trialId} link={link} />
              ))}
            </ol>
            {tasted(chain).length > 1 ? (
              <LinkButton href={`#/together/${tasted(chain).join(',')}`}>
                See them together
              </LinkButton>
            ) : null}
          </Fold>
        ) : null
      })}
    </Section>
  )
}

function Question({ link: { line, cameFrom } }: { link: ChainLink }) {
  const { place, words } = stageWords(line)
  return (
    <li className={line.stage === 'planning' ? styles.open : styles.made}>
      <Link href={`/trial/${line.trialId}/${place}`}>{line.question}</Link>
      {line.follows ? (
        <span className={styles.how}>{followsText(line.follows.how, cameFrom)}</span>
      ) : null}
      <span className={styles.answer}>{answerOf(line) ?? `${words}.`}</span>
    </li>
  )
}

/** Those that could be one answer: tasted, and their codes given away. */
const tasted = (chain: readonly ChainLink[]) =>
  chain.flatMap(({ line }) => (!line.sealed && line.sessionsDone > 0 ? [line.trialId] : []))

const answerOf = ({ answer, sealed }: Summary) => (sealed ? undefined : answer)

/** The newest answer of a chain, or that there is none yet. */
function lastAnswer(chain: readonly ChainLink[]): string {
  return chain.findLast(({ line }) => answerOf(line))?.line.answer ?? 'No answer yet.'
}
