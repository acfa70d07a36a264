import { spawnSync } from 'node:child_process'

const candidates = ['nats-server', '/usr/sbin/nats-server', '/usr/local/bin/nats-server']

/** The message server of this machine that is new enough; null where there is none. */
export function findServer(): { path: string; version: string } | null {
  const named = process.env.NATS_SERVER_PATH
  for (const path of named ? [named] : candidates) {
    const said = spawnSync(path, ['--version'], { encoding: 'utf8', timeout: 10_000 }).stdout ?? ''
    const [version, major = 0, minor = 0] = (/(\d+)\.(\d+)\.\d+/.exec(said) ?? []).map(
      (part, at) => (at === 0 ? part : Number(part)),
    )
    if (typeof version === 'string' && (Number(major) > 2 || (major === 2 && Number(minor) >= 9)))
      return { path, version }
  }
  return null
}
