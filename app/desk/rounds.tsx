/** The rounds of a project: what changed in each, its blueprint, and its pairs. */
import { useState } from 'preact/hooks';
import {
  complaintKinds,
  foamIds,
  partIds,
  type ComplaintKind,
  type FoamId,
  type PartId,
} from '../../core/foot/index.ts';
import { drawCodes } from '../../core/panel/index.ts';
import {
  measures,
  roundStages,
  unitsOf,
  type Change,
  type Dimension,
  type Measure,
  type RecordId,
  type Round,
} from '../../core/records/index.ts';
import { footLengthOf, millimetres, parseDecimal, toMetres } from '../../core/units/index.ts';
import { Button, LinkButton } from '../parts/controls/controls.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { d, terms } from '../words/index.ts';
import type { TabProps } from './desk-state.ts';
import { saveRecord, SelectField, SmallForm, TextField, Unfold } from './form-parts.tsx';

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
          <p class="soft">
            {props.review.pairs
              .filter((pair) => pair.round === round.id)
              .map(({ code }) => code)
              .join(', ')}
          </p>
          <PairForm {...props} round={round.id} />
        </section>
      ))}
      <RoundForm {...props} />
    </>
  );
};

const PairForm = ({ records, review, round }: TabProps & { round: RecordId }) => {
  const words = d().rounds;
  const project = review.project.id;
  const [code, setCode] = useState('');
  const [size, setSize] = useState('42');
  const [carried, setCarried] = useState('');
  const draw = () => {
    const used = new Set(records.pair.map(({ body }) => body.code));
    const seed = crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
    const [drawn] = drawCodes(1, used, seed) ?? [];
    if (drawn === undefined) showToast({ text: d().panel.plan.noCode });
    else setCode(drawn);
  };
  return (
    <Unfold label={words.addPair}>
      {(close) => (
        <SmallForm
          save={async () => {
            const eu = parseDecimal(size);
            const km = carried.trim() === '' ? 0 : parseDecimal(carried);
            if (code.trim() === '') return `${words.code}: ${d().missing}`;
            if (eu === null || km === null) return d().wrongNumber;
            const saved = await saveRecord('pair', {
              project,
              round,
              code: code.trim().toUpperCase(),
              sizeMm: millimetres(Math.round(footLengthOf(eu, 'eu'))),
              ...(km > 0 && { carriedInM: toMetres(km, 'km') }),
            });
            if (!saved) return d().trouble;
            setCode('');
            close();
            return null;
          }}
        >
          <div class="field-row">
            <TextField label={words.code} hint={words.codeHint} value={code} onInput={setCode} />
            <TextField label={words.size} value={size} onInput={setSize} numeric />
            <TextField label={words.carriedIn} value={carried} onInput={setCarried} numeric />
          </div>
          <div class="row">
            <Button kind="quiet" onClick={draw}>
              {d().panel.plan.drawCode}
            </Button>
          </div>
        </SmallForm>
      )}
    </Unfold>
  );
};

interface ChangeForm {
  readonly part: PartId;
  readonly what: string;
  readonly mends: ComplaintKind | '';
}

interface DimensionForm {
  readonly measure: Measure;
  readonly site: string;
  readonly nominal: string;
  readonly lower: string;
  readonly upper: string;
}

const emptyDimension: DimensionForm = {
  measure: 'stack-height',
  site: 'heel-centre',
  nominal: '',
  lower: '-1',
  upper: '1',
};

const replaced = <T,>(list: readonly T[], index: number, part: Partial<T>): readonly T[] =>
  list.map((one, other) => (other === index ? { ...one, ...part } : one));

const RoundForm = ({ review }: TabProps) => {
  const words = d().rounds;
  const [name, setName] = useState('');
  const [stage, setStage] = useState<Round['stage']>('first-samples');
  const [foam, setFoam] = useState<FoamId | 'unsaid'>('unsaid');
  const [changes, setChanges] = useState<readonly ChangeForm[]>([]);
  const [dimensions, setDimensions] = useState<readonly DimensionForm[]>([]);

  const save = async (close: () => void) => {
    if (name.trim() === '') return `${words.name}: ${d().missing}`;
    const blueprint: Dimension[] = [];
    for (const { measure, site, ...typed } of dimensions) {
      const nominal = parseDecimal(typed.nominal);
      const lower = parseDecimal(typed.lower);
      const upper = parseDecimal(typed.upper);
      if (nominal === null || lower === null || upper === null || lower > upper)
        return `${words.blueprint}: ${d().wrongNumber}`;
      blueprint.push({ measure, site, unit: unitsOf[measure][0], nominal, lower, upper });
    }
    const saved = await saveRecord('round', {
      project: review.project.id,
      name: name.trim(),
      order: Math.max(0, ...review.rounds.map(({ order }) => order)) + 1,
      stage,
      changes: changes
        .filter(({ what }) => what.trim() !== '')
        .map(({ part, what, mends }): Change => ({
          part,
          what: what.trim(),
          ...(mends !== '' && { mends: { kind: mends } }),
        })),
      ...(foam !== 'unsaid' && { foam }),
      blueprint,
    });
    if (!saved) return d().trouble;
    setName('');
    setChanges([]);
    close();
    return null;
  };

  return (
    <Unfold label={words.add}>
      {(close) => (
        <SmallForm save={() => save(close)}>
          <div class="field-row">
            <TextField label={words.name} value={name} onInput={setName} />
            <SelectField
              label={words.stage}
              value={stage}
              options={roundStages.map((value) => ({ value, label: terms().stages[value] }))}
              onChange={setStage}
            />
            <SelectField<FoamId | 'unsaid'>
              label={words.foam}
              value={foam}
              options={[
                { value: 'unsaid', label: words.foamUnsaid },
                ...foamIds.map((value) => ({ value, label: terms().foams[value] })),
              ]}
              onChange={setFoam}
            />
          </div>
          <h3>{words.changes}</h3>
          {changes.map((change, index) => (
            <div class="field-row" key={index}>
              <SelectField
                label={words.part}
                value={change.part}
                options={partIds.map((value) => ({ value, label: terms().parts[value].name }))}
                onChange={(part) => setChanges(replaced(changes, index, { part }))}
              />
              <TextField
                label={words.what}
                value={change.what}
                onInput={(what) => setChanges(replaced(changes, index, { what }))}
              />
              <SelectField
                label={words.mends}
                value={change.mends}
                options={complaintKinds.map((value) => ({
                  value,
                  label: terms().kinds[value].name,
                }))}
                onChange={(mends) => setChanges(replaced(changes, index, { mends }))}
              />
            </div>
          ))}
          <Button
            kind="quiet"
            onClick={() => setChanges([...changes, { part: 'upper-pattern', what: '', mends: '' }])}
          >
            {words.addChange}
          </Button>
          <h3>{words.blueprint}</h3>
          {dimensions.map((dimension, index) => (
            <div class="field-row" key={index}>
              <SelectField
                label={d().bench.reading}
                value={dimension.measure}
                options={measures.map((value) => ({ value, label: terms().measures[value] }))}
                onChange={(measure) => setDimensions(replaced(dimensions, index, { measure }))}
              />
              <TextField
                label={d().bench.site}
                value={dimension.site}
                onInput={(site) => setDimensions(replaced(dimensions, index, { site }))}
              />
              {(['nominal', 'lower', 'upper'] as const).map((field) => (
                <TextField
                  key={field}
                  label={`${field === 'nominal' ? d().bench.nominal : words[field]}, ${terms().units[unitsOf[dimension.measure][0]]}`}
                  value={dimension[field]}
                  onInput={(value) =>
                    setDimensions(replaced(dimensions, index, { [field]: value }))
                  }
                  numeric
                />
              ))}
            </div>
          ))}
          <Button kind="quiet" onClick={() => setDimensions([...dimensions, emptyDimension])}>
            {words.addDimension}
          </Button>
        </SmallForm>
      )}
    </Unfold>
  );
};
