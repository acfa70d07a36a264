/** Why a backup did not come into its folder. */
export type FolderTrouble = 'not-allowed' | 'gone' | 'full' | 'not-whole' | 'not-written'

/** Where the backup is kept, and as of when; `when` is empty before the first was written. */
export function folderText(name: string, when: string): string {
  return when === ''
    ? `The backup is to be kept in “${name}”.`
    : `A backup is kept in “${name}” and renewed while this notebook is open: last written ${when}.`
}

/** Why nothing newer lies in the folder, and the mend. */
export function folderTroubleText(
  name: string,
  trouble: FolderTrouble,
): { title: string; mend: string } {
  switch (trouble) {
    case 'not-allowed':
      return {
        title: `The browser asks again before it writes into “${name}”.`,
        mend: 'Nothing newer is in the folder until you allow it; what lies there stays.',
      }
    case 'gone':
      return {
        title: `The folder “${name}” cannot be reached.`,
        mend: 'Plug in its disk, or choose another folder. The notebook is as it was.',
      }
    case 'full':
      return {
        title: `There is no room in “${name}” for the backup.`,
        mend: 'Make room, or choose another folder. The backup from before stays.',
      }
    case 'not-whole':
      return {
        title: 'A trial could not be read, so the backup in the folder was not renewed.',
        mend: 'The one from before stays. Back up all, which says what is not in it.',
      }
    case 'not-written':
      return {
        title: `The backup could not be written into “${name}”.`,
        mend: 'Try again, or choose another folder. The backup from before stays.',
      }
  }
}

/** What a folder is good for, where none is chosen. */
export const folderOffer =
  'Choose a folder, best one on another disk or one that is copied elsewhere: the backup there is renewed by itself.'
