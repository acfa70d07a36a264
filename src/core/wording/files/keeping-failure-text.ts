import type { FailureReason } from '@/core/record/failure-reason.ts'

/** What a person is told when the notebook could not keep or read something. */
export interface KeepingFailureWords {
  /** What happened. */
  title: string
  /** What is kept and what is not. */
  kept: string
  /** What to do. */
  mend: string
  /** The press that mends it, where there is one. */
  press: 'again' | 'reload'
}

const nothingOfIt = 'Nothing of this last change was kept; everything kept before it is safe.'

/** Why the notebook could not do what was asked, in a baker's words: what happened, what is kept, what to do. */
export function keepingFailureText(reason: FailureReason | null): KeepingFailureWords {
  switch (reason) {
    case 'out-of-room':
      return {
        title: 'This device has no room left.',
        kept: nothingOfIt,
        mend: 'Free some room on the device, such as films or downloads you no longer need, or back up and erase old trials in the bin. Then try again.',
        press: 'again',
      }
    case 'cleared':
      return {
        title: 'This site’s data were cleared.',
        kept: 'The notebook this page worked on is gone from this browser; what still stands on the page is not kept anywhere.',
        mend: 'Copy down what you need from this page, then reload it and restore your latest backup.',
        press: 'reload',
      }
    case 'closed-by-newer':
      return {
        title: 'A newer version of Evenhand has opened the notebook in another window.',
        kept: 'Everything kept so far is safe; this page can keep nothing more.',
        mend: 'Reload this page to go on with the newer version.',
        press: 'reload',
      }
    case 'newer-database':
      return {
        title: 'The notebook was written by a newer version of Evenhand.',
        kept: 'Nothing was changed.',
        mend: 'Reload to get the newer version, or open the address where you used it last.',
        press: 'reload',
      }
    case 'blocked':
      return {
        title: 'Another window holds the notebook.',
        kept: 'Nothing was changed.',
        mend: 'Close the other windows and tabs with Evenhand, then reload this one.',
        press: 'reload',
      }
    case 'closed':
      return {
        title: 'The notebook was closed while this page was open.',
        kept: 'Everything kept before is safe; this last change was not kept.',
        mend: 'Reload this page and make the change again.',
        press: 'reload',
      }
    case 'damaged':
      return {
        title: 'A record in the notebook cannot be read.',
        kept: 'Nothing was changed, and the other trials can be used.',
        mend: 'Reload once. If it stays, back up what can be read, then read in this trial’s file or your latest backup in another browser.',
        press: 'reload',
      }
    case 'no-such-trial':
      return {
        title: 'This trial is no longer in the notebook.',
        kept: 'It was erased, perhaps in another window; nothing was kept of this last change.',
        mend: 'Open the notebook and look for it there; its file or a backup brings it back.',
        press: 'reload',
      }
    case 'refused-record':
      return {
        title: 'This does not fit what the notebook holds.',
        kept: nothingOfIt,
        mend: 'It may have been changed in another window. Reload the page, look at what stands there, and do it again if it is still wanted.',
        press: 'reload',
      }
    case 'house-moved-on':
      return {
        title: 'Another window changed this house formula meanwhile.',
        kept: nothingOfIt,
        mend: 'Open it again, look at what stands there now, and change it if it is still wanted.',
        press: 'again',
      }
    case 'moved-on':
      return {
        title: 'The log has moved on since you looked.',
        kept: nothingOfIt,
        mend: 'Look at what stands there now, and press again if it is still wanted.',
        press: 'again',
      }
    case 'in-use':
      return {
        title: 'A trial names this.',
        kept: 'It stays in the kitchen.',
        mend: 'Take it out of the trials that name it first.',
        press: 'again',
      }
    case 'locked':
      return {
        title: 'This part of the plan is locked since the first mix.',
        kept: 'The plan stands as it was.',
        mend: 'Start a trial that follows this one to ask it another way.',
        press: 'again',
      }
    case 'lasting':
      return {
        title: 'This stays in the log.',
        kept: 'A lock, an unsealing and every look are kept for good, so that the report can tell of them. Nothing was changed.',
        mend: 'Write a note beside it if something has to be explained.',
        press: 'reload',
      }
    case 'still-awaited':
      return {
        title: 'The codes stay sealed for now.',
        kept: 'A ballot is still missing or a taster awaited. Nothing was changed.',
        mend: 'Wait for the last ballot, mark who left or does not taste, or close the tasting with a reason.',
        press: 'reload',
      }
    case 'tasting-over':
      return {
        title: 'This tasting is over.',
        kept: 'The ballots that were sealed stand as they are. This one was not taken: the tasting was closed or its codes are open.',
        mend: 'Reload the page to see where it stands.',
        press: 'reload',
      }
    case null:
      return {
        title: 'Something went wrong.',
        kept: 'Everything that was logged or kept before is safe in the notebook.',
        mend: 'Try again. If it comes back, reload the page.',
        press: 'again',
      }
  }
}
