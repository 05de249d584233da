/** 工作台的文字；一个主题一个文件。 */
import type { DeskWords } from '../../../types.ts';
import { arrival } from './arrival.ts';
import { ask } from './ask.ts';
import { audit } from './audit.ts';
import { bench } from './bench.ts';
import { blueprint } from './blueprint.ts';
import { brief } from './brief.ts';
import { changed } from './changed.ts';
import { changes } from './changes.ts';
import { comfort } from './comfort.ts';
import { common } from './common.ts';
import { complaints } from './complaints.ts';
import { finding } from './finding.ts';
import { group } from './group.ts';
import { joined } from './joined.ts';
import { lines } from './lines.ts';
import { overview } from './overview.ts';
import { pain } from './pain.ts';
import { pairs } from './pairs.ts';
import { panel } from './panel.ts';
import { proof } from './proof.ts';
import { report } from './report.ts';
import { rounds } from './rounds.ts';
import { tabs } from './tabs.ts';
import { testers } from './testers.ts';
import { unread } from './unread.ts';
import { verdict } from './verdict.ts';
import { waiting } from './waiting.ts';
import { wear } from './wear.ts';

export const desk: DeskWords = {
  ...common,
  arrival,
  unread,
  tabs,
  brief,
  pairs,
  ask,
  waiting,
  comfort,
  complaints,
  pain,
  finding,
  joined,
  proof,
  bench,
  wear,
  verdict,
  changes,
  changed,
  report,
  rounds,
  lines,
  testers,
  blueprint,
  panel,
  group,
  overview,
  audit,
};
