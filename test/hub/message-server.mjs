// Gets the message server for the tests of the hub where it is missing and can be had; else says so, and they are passed over.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'

const there = () =>
  [process.env.NATS_SERVER_PATH ?? 'nats-server', '/usr/sbin/nats-server'].some(
    (path) => spawnSync(path, ['--version']).status === 0,
  )

if (!there() && process.getuid?.() === 0 && existsSync('/etc/debian_version')) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  const lock = ['-o', 'DPkg::Lock::Timeout=600', '-o', 'Acquire::Retries=3']
  const run = (args) =>
    spawnSync('apt-get', [...lock, ...args], { stdio: ['ignore', 2, 2], env }).status === 0
  const install = ['install', '-y', '-q', '--no-install-recommends', 'nats-server']
  if (!run(install)) run(['update', '-q']) && run(install)
}
if (!there())
  console.log('No message server (nats-server) here: the tests of the hub are passed over.')
