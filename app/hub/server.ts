/**
 * The hub's process.
 *
 *   tsx app/hub/server.ts [--data DIR] [--port N] [--host ADDRESS] [--group NAME] [--demo FILE]
 *                         [--new-lead-code] [--dist DIR] [--quiet]
 *                         [--tiles ADDRESS --attribution TEXT]
 *
 * Prints where it is reached and, once, how to sign in. Stops on SIGINT and SIGTERM.
 */
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { renderUnicodeCompact } from 'uqr';
import * as z from 'zod/mini';
import { tilesSchema, type Tiles } from '../../core/records/index.ts';
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
    tiles: { type: 'string' },
    attribution: { type: 'string' },
  },
});

/** The tile address of the command line, or the end of this process with what is wrong with it. */
const readTiles = (): Tiles | undefined => {
  if (values.tiles === undefined) return undefined;
  const read = z.safeParse(tilesSchema, { url: values.tiles, attribution: values.attribution });
  if (read.success) return read.data;
  console.error(
    read.error.issues[0]?.path[0] === 'url'
      ? `--tiles: ${values.tiles} is no tile address. It has {z}, {x} and {y} in its path, such as https://tiles.example/{z}/{x}/{y}.png`
      : '--attribution: say whom the map names for its tiles, as their terms of use ask.',
  );
  process.exit(1);
};
const tiles = readTiles();

const hub = await startHub({
  dataDir: values.data,
  host: values.host,
  port: Number(values.port),
  dist: values.dist,
  groupName: values.group,
  newLeadCode: values['new-lead-code'],
  ...(tiles && { tiles }),
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
