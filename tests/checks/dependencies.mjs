/**
 * Is what the product is built on what it was, and is nothing in it known to be unsafe? Every package of the
 * lock file must come with its hash from the registry; the registry is asked for advisories of high or
 * critical severity about what runs. Where it gives no answer, that part is skipped and says so.
 */
import { execFile } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const root = fileURLToPath(new URL('../..', import.meta.url));
const run = promisify(execFile);

const withoutHash = async () => {
  const { packages } = JSON.parse(await readFile(`${root}package-lock.json`, 'utf8'));
  return Object.entries(packages)
    .filter(([name, { integrity, link }]) => name !== '' && !link && !/^sha512-/.test(integrity))
    .map(([name]) => `${name}: no SHA-512 in package-lock.json`);
};

/** Advisories as npm tells them; null where the registry gave no answer. */
const advisories = async () => {
  const words = ['audit', '--omit=dev', '--audit-level=high', '--json'];
  // npm ends with an error both where it found something and where it could not ask.
  const { stdout } = await run('npm', words, { cwd: root, timeout: 60_000 }).catch(
    (error) => error,
  );
  const said = JSON.parse(stdout || '{}');
  if (!said.vulnerabilities) return null;
  return Object.values(said.vulnerabilities)
    .filter(({ severity }) => ['high', 'critical'].includes(severity))
    .map(({ name, severity, range }) => `${name} ${range}: ${severity}`);
};

export async function dependenciesAreSafe() {
  const lacking = await withoutHash();
  const found = await advisories().catch(() => null);
  const problems = [...lacking, ...(found ?? [])];
  return {
    ok: problems.length === 0,
    skipped: problems.length === 0 && found === null,
    output: found === null ? 'the registry gave no answer about advisories' : problems.join('\n'),
  };
}
