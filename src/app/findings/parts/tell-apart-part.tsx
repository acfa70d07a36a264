import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import { tellApartSentence } from '@/core/wording/findings/tell-apart-sentence.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { Method } from './method.tsx'
import { PartFold } from './part-fold.tsx'

/** Can people tell them apart: each test's answer, where any was made. */
export function TellApartPart({ findings }: { findings: FindingsDocument }) {
  const [first, ...others] = findings.discrimination
  if (!first) return null
  return (
    <PartFold title="Told apart" result={tellApartSentence(first, findings)}>
      {others.map((test) => (
        <p key={`${test.test} ${test.between.join()}`}>
          {boundUnits(tellApartSentence(test, findings))}
        </p>
      ))}
      <Method what="telling apart was" topics={['tellApart', 'discriminators']} />
    </PartFold>
  )
}
