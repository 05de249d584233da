/**
 * The hub's process.
 *
 *   tsx app/hub/server.ts [--data DIR] [--port N] [--host ADDRESS] [--group NAME] [--demo FILE]
 *                         [--new-lead-code] [--dist DIR] [--quiet]
 *
 * Prints where it is reached and, once, how to sign in. Stops on SIGINT and SIGTERM.
 */
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { renderUnicodeCompact } from 'uqr';
import { startHub, type Invite } from './start.ts';

const { values } = parseArgs({
  options: {
    data: { type: 'string', default: '.pairlog' },
    port: { type: 'string', default: '8080' },
    host: { type: 'string', default: '127.0.0.1' },
    group: { type: 'string', default: 'Wear test' },
    demo: { type: 'string' },
    dist: { type: 'string', default: fileURLToPath(new URL('../../dist', import.meta.url)) },
    'new-lead-code': { type: 'boolean', default: false },
    quiet: { type: 'boolean', default: false },
  },
});

const hub = await startHub({
  dataDir: values.data,
  host: values.host,
  port: Number(values.port),
  dist: values.dist,
  groupName: values.group,
  newLeadCode: values['new-lead-code'],
  ...(values.demo !== undefined && { demo: values.demo }),
  ...(!values.quiet && { log: (line) => process.stderr.write(`${JSON.stringify(line)}\n`) }),
});

/** The code stands after the #: a browser keeps that part to itself, so it is in no log. */
const linkOf = ({ code }: Invite) => `${hub.url}/join#${code}`;

const as = ({ role, who }: Invite) => (who === null ? `as ${role}` : `as ${role} ${who}`);

console.log(`\nPairlog is running: ${hub.url}\nGroup: ${hub.groupName}`);
for (const invite of hub.invites) {
  console.log(`\nSign in ${as(invite)} (once, within 72 hours):\n  ${linkOf(invite)}`);
  console.log(renderUnicodeCompact(linkOf(invite), { border: 1 }));
}
if (hub.invites.length === 0)
  console.log('To sign in another lead, stop and start with --new-lead-code.');
console.log('\nStop with Ctrl+C.');

for (const signal of ['SIGINT', 'SIGTERM'] as const)
  process.on(signal, () => {
    void hub.close().then(() => process.exit(0));
  });
