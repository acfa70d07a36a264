// Gets the message server for the tests of the hub where it is missing and can be had; else says so, and they are passed over.
// src/hub/find-server.ts looks in the same places and asks for the same version.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'

const named = process.env.NATS_SERVER_PATH
const places = named
  ? [named]
  : ['nats-server', '/usr/sbin/nats-server', '/usr/local/bin/nats-server']

const there = () =>
  places.some((path) => {
    const said = spawnSync(path, ['--version'], { encoding: 'utf8' }).stdout ?? ''
    const [, major, minor] = (/(\d+)\.(\d+)\.\d+/.exec(said) ?? []).map(Number)
    return major > 2 || (major === 2 && minor >= 9)
  })

if (!there() && !named && process.getuid?.() === 0 && existsSync('/etc/debian_version')) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  const lock = ['-o', 'DPkg::Lock::Timeout=600', '-o', 'Acquire::Retries=3']
  const run = (args) =>
    spawnSync('apt-get', [...lock, ...args], { stdio: ['ignore', 2, 2], env }).status === 0
  const install = ['install', '-y', '-q', '--no-install-recommends', 'nats-server']
  if (!run(install)) run(['update', '-q']) && run(install)
}
if (!there())
  console.log(
    named
      ? `NATS_SERVER_PATH names ${named}, which is no message server of 2.9 or newer: the tests of the hub are passed over.`
      : 'No message server (nats-server 2.9 or newer) here, and none could be installed: the tests of the hub are passed over.',
  )
