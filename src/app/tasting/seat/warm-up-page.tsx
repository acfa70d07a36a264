import { Button } from '@/app/kit/press/button.tsx'
import type { BlindServing } from '@/core/seal/blind/blind-view.ts'
import { refreshText, warmUpText } from '@/core/wording/tasting/before-first-text.ts'
import type { Seat } from './seat.ts'
import { SeatPage } from './seat-page.tsx'
import { useBegun } from './use-begun.ts'

interface WarmUpPageProps {
  seat: Seat
  /** What comes after it. */
  first: BlindServing
  onHad: () => unknown
}

/** Before the first sample that counts: one to warm up with, which is not scored. */
export function WarmUpPage({ seat, first, onHad }: WarmUpPageProps) {
  const begun = useBegun(seat, first.code, onHad)
  if (begun !== false) return null
  const code = first.plate === undefined ? seat.view.warmUpCode : null
  return (
    <SeatPage
      title={code ?? 'To warm up'}
      titleLook={code === null ? 'words' : 'next'}
      name={seat.name}
      progress="to warm up"
      foot={
        <Button size="bench" kind="primary" onPress={onHad}>
          I have tasted it
        </Button>
      }
    >
      <p>
        {warmUpText(code)} {refreshText}
      </p>
    </SeatPage>
  )
}
