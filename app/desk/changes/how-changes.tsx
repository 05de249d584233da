/** How sure is what two rounds say? Every change with its test, every complaint, comfort and bench, with n and interval. */
import type { ChangesLook } from '../../../core/review/index.ts';
import { d } from '../../words/index.ts';
import { knewLine, orderLine } from '../../words/say-change.ts';
import type { TabProps } from '../desk-state.ts';
import { HowSure } from '../frame/how-sure.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { BenchTable } from './bench-table.tsx';
import { CellChanges, NewComplaints } from './cell-changes.tsx';
import { ChangeSheet } from './change-sheet.tsx';
import { ComfortChanges } from './comfort-changes.tsx';
import { TwoSidedMoves } from '../parts/two-sided-moves.tsx';

export const HowChanges = (props: TabProps & { readonly look: ChangesLook }) => {
  const found = props.look.comparison;
  const words = d().changes;
  const speaker = speakerOf(props);
  const knew = knewLine(found, speaker);
  const order = orderLine(found, speaker);
  return (
    <HowSure>
      {order && <p>{order}</p>}
      {knew && <p>{knew}</p>}
      {found.hands === 'blind-only' && <p>{words.blindRead}</p>}
      {found.changes.length === 0 ? (
        <p>{words.noChanges}</p>
      ) : (
        <ul class="plain-list stack">
          {found.changes.map((change, at) => (
            <li key={`${change.round} ${at}`}>
              <ChangeSheet {...props} change={change} rounds={found} />
            </li>
          ))}
        </ul>
      )}
      <NewComplaints {...props} found={found} />
      {found.comfort.same.length + found.comfort.onlyOne.length === 0 && <p>{words.noComfort}</p>}
      <ComfortChanges title={words.comfortSame} changes={found.comfort.same} />
      <ComfortChanges title={words.comfortOne} changes={found.comfort.onlyOne} />
      <TwoSidedMoves
        title={d().comfort.twoSided.movedTitle(
          speaker.round(found.earlier),
          speaker.round(found.later),
        )}
        changes={found.twoSided}
        speaker={speaker}
      />
      <BenchTable {...props} found={found} />
      <CellChanges {...props} found={found} />
      <p>{words.how}</p>
    </HowSure>
  );
};
