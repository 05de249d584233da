/** The rounds of a project: what changed in each, its blueprint, and its pairs. */
import type { RecordId } from '../../core/records/index.ts';
import { LinkButton } from '../parts/controls/controls.tsx';
import { formatSize } from '../parts/format.ts';
import { d, terms } from '../words/index.ts';
import { lastLine } from '../words/say-blueprint.ts';
import type { TabProps } from './desk-state.ts';
import { PairForm, PairsForm } from './pair-forms.tsx';
import { RoundForm } from './round-form.tsx';
import { speakerOf } from './speaker.ts';

export const Rounds = (props: TabProps) => {
  const words = d().rounds;
  const { rounds } = props.review;
  return (
    <>
      <LinkButton href={`/desk/${props.review.project.id}/brief`}>{d().brief.edit}</LinkButton>
      {rounds.length === 0 && <p>{words.none}</p>}
      {rounds.map((round) => (
        <section class="sheet" key={round.id} aria-label={round.name}>
          <div class="row row-apart">
            <h2>{round.name}</h2>
            <span class="soft">{terms().stages[round.stage]}</span>
          </div>
          <hr class="stitch" />
          {round.changes.length === 0 ? (
            <p class="soft">{words.noChanges}</p>
          ) : (
            <ul>
              {round.changes.map(({ part, what, mends }) => (
                <li key={`${part} ${what}`}>
                  {`${terms().parts[part].name}: ${what}`}
                  {mends && (
                    <span class="soft">
                      {` (${words.mends}: ${terms().kinds[mends.kind].name})`}
                    </span>
                  )}
                </li>
              ))}
            </ul>
          )}
          <PairsOf {...props} round={round.id} />
          <Drawn {...props} round={round.id} />
          <div class="part stack">
            <PairForm {...props} round={round.id} />
            <PairsForm {...props} round={round.id} />
            <EditRound {...props} round={round.id} />
          </div>
        </section>
      ))}
      <RoundForm {...props} />
    </>
  );
};

const PairsOf = ({ review, round }: TabProps & { round: RecordId }) => {
  const pairs = review.pairs.filter((pair) => pair.round === round);
  if (pairs.length === 0) return null;
  const list = pairs.map(({ code, sizeMm }) => `${code} (${formatSize(sizeMm)})`).join(', ');
  return <p>{`${d().rounds.pairs(pairs.length)}: ${list}`}</p>;
};

/** The round's record, which holds what the review does not. */
const recordOf = ({ records, round }: TabProps & { round: RecordId }) =>
  records.round.find(({ revision }) => revision.id === round);

/** How much of a blueprint there is, and the last. */
const Drawn = (props: TabProps & { round: RecordId }) => {
  const body = recordOf(props)?.body;
  if (!body) return null;
  return (
    <ul>
      <li>{d().blueprint.blueprintLine(body.blueprint.length)}</li>
      {body.last && <li>{lastLine(body.last, speakerOf(props))}</li>}
      {body.layers && (
        <li>
          {`${d().blueprint.layers}: ${body.layers
            .map(({ zone, count }) => `${zone} ${terms().zones[zone].name} ${count}`)
            .join(', ')}`}
        </li>
      )}
    </ul>
  );
};

const EditRound = (props: TabProps & { round: RecordId }) => {
  const record = recordOf(props);
  return record ? <RoundForm {...props} of={record} /> : null;
};
