const name = 'evenhand-restore'

/**
 * Tells a restore that runs, in whatever window, from one that was cut short. A page that is not served securely has no
 * such locks: then nothing is held, and a restore of another window cannot be told.
 */
export const restoreLock = {
  async hold<Answer>(task: () => Promise<Answer>): Promise<Answer> {
    if (!('locks' in navigator)) return await task()
    return await navigator.locks.request(name, task)
  },
  async held(): Promise<boolean> {
    if (!('locks' in navigator)) return false
    const { held = [] } = await navigator.locks.query()
    return held.some((lock) => lock.name === name)
  },
}
