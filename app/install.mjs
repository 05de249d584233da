/**
 * Is everything installed that this checkout needs? Plain Node, no package: it runs on a machine that
 * has Node and nothing else. Installs again only when the lock file changed or more is wanted.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const marker = `${root}node_modules/.pairlog-installed`;
const OLDEST_NODE = [20, 19];

/** The embedded database is native code: where no built copy can be had, these compile it. */
export const compilerPackages = ['python3', 'make', 'g++'];

const npm = (args) =>
  spawnSync('npm', args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' })
    .status === 0;

/** Runs apt-get where that can work (Debian or its kin, as root); false elsewhere or on failure. */
export function aptInstall(packages) {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return false;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const apt = (...args) => spawnSync('apt-get', args, { stdio: 'inherit', env }).status === 0;
  apt('update', '-qq');
  return apt(
    'install',
    '-y',
    '--no-install-recommends',
    '-o',
    'DPkg::Lock::Timeout=300',
    '-qq',
    ...packages,
  );
}

/** @param {'run' | 'all'} what `run`: what the product needs; `all`: also what tests and checks need */
export function install(what) {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor < OLDEST_NODE[1])) {
    console.error(
      `Pairlog needs Node ${OLDEST_NODE.join('.')} or newer; this is ${process.version}.`,
    );
    process.exit(1);
  }
  const lock = createHash('sha256')
    .update(readFileSync(`${root}package-lock.json`))
    .digest('hex');
  const installed = existsSync(marker) ? readFileSync(marker, 'utf8').split(' ') : [];
  if (installed[0] === lock && (installed[1] === 'all' || installed[1] === what)) return;

  console.log('Installing packages (once; a minute or two) …');
  const ci = ['ci', '--no-fund', '--no-audit', ...(what === 'run' ? ['--omit=dev'] : [])];
  if (!npm(ci)) {
    console.log('The install failed. Trying again with a compiler for the embedded database …');
    if (!aptInstall(compilerPackages) || !npm(ci)) {
      console.error(
        `npm could not install the packages. If the messages above speak of node-gyp, install ` +
          `${compilerPackages.join(', ')} and run this command again.`,
      );
      process.exit(1);
    }
  }
  writeFileSync(marker, `${lock} ${what}`);
}
