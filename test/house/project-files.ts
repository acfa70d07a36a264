import { execFileSync } from 'node:child_process'

/** Every file of the project that git knows or would add, as paths from the root. */
export function projectFiles(): string[] {
  const root = new URL('../..', import.meta.url).pathname
  const list = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
    cwd: root,
    encoding: 'utf8',
  })
  return list.split('\n').filter(Boolean)
}
