/** What keeps a command from answering, as the person at the terminal reads it: file, place and mend. */
export class CommandTrouble extends Error {
  override readonly name = 'CommandTrouble'
}
