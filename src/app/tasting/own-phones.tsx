import { Fold } from '@/app/kit/page/fold.tsx'
import { Collect } from './slips/collect.tsx'
import { HandOut } from './slips/hand-out.tsx'

/** Ballots on the tasters' own phones: out by a code or a link, back by a scan, a link or a file. */
export function OwnPhones() {
  return (
    <>
      <Fold name="On their own phones" result="a code or a link each" level={3}>
        <HandOut />
      </Fold>
      <Fold name="Collect ballots" result="scan, paste or take files" level={3}>
        <Collect />
      </Fold>
    </>
  )
}
