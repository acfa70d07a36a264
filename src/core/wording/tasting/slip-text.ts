/** Why a slip gives no ballot, and the mend. */
export function slipTroubleText(reason: 'incomplete' | 'newer-version' | 'not-a-slip'): string {
  return {
    incomplete:
      'The link is not whole: something cut it on its way. Scan the code, or ask for the link again.',
    'newer-version':
      'This ballot comes from a newer version of the app. Load this page again, then open it once more.',
    'not-a-slip': 'Nothing was handed out to this phone. Ask the host for a code or a link.',
  }[reason]
}

/** What a return is refused for, and the mend. */
export function returnRefusalText(
  reason:
    | 'not-a-return'
    | 'newer-version'
    | 'other-tasting'
    | 'altered'
    | 'stale'
    | 'does-not-fit'
    | 'nobody-of-that-name',
  initials = '',
): string {
  return {
    'not-a-return': 'That is no ballot of a tasting.',
    'newer-version': 'That ballot comes from a newer version of the app; load this page again.',
    'other-tasting': 'That ballot belongs to another tasting. Nothing was taken.',
    altered:
      'That ballot is damaged or was changed on its way. Nothing was taken; ask for the code once more.',
    stale: 'That ballot answers a slip that was handed out anew since. Scan the newer one.',
    'does-not-fit': 'That ballot does not fit what was asked. Nothing was taken.',
    'nobody-of-that-name': `Nobody at the table goes by ${initials}. Add them as a taster, then scan again.`,
  }[reason]
}

/** What looks odd about a return that was taken all the same. */
export function oddReturnText(odd: readonly ('out-of-order' | 'times')[]): string {
  const said = {
    'out-of-order': 'scored in another order than dealt',
    times: 'its times cannot be',
  }
  return odd.map((one) => said[one]).join(', ')
}

/** What slips protect against, honestly. */
export const slipsProtect =
  'Each slip is sealed for one taster: mix-ups and damage show. It does not show who held the phone, nor that somebody made up their own answers.'

/** What keeps a camera from being used (`name` of the browser's exception), and the mend. */
export function cameraTroubleText(name: string): string {
  if (name === 'NotAllowedError')
    return 'The camera is not allowed for this page. Allow it in the browser’s settings, or paste the link.'
  if (name === 'NotFoundError')
    return 'This device has no camera. Paste the link, or choose a file.'
  return 'The camera cannot be opened, perhaps because another program holds it or the page is not served securely. Paste the link, or choose a file.'
}
