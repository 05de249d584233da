/** A round in its form comes back as it was, and what cannot be is told with its place. */
import { describe, expect, it } from 'vitest';
import {
  canBeTakenOver,
  draftOfPractice,
  draftOfRound,
  duplicateOf,
  firstRoundLike,
  newRound,
  emptyChange,
  emptyDimension,
  takeOver,
  usualLeft,
  type DimensionDraft,
} from '../../../app/drafts/round.ts';
import { readDraft } from '../../../app/drafts/round-reading.ts';
import { practiceDimensions } from '../../../core/rounds/index.ts';
import { readBody, type Round, type StructuredChange } from '../../../core/records/index.ts';
import { millimetres as mm } from '../../../core/units/index.ts';
import { languageFile, languages } from '../../../app/terminal/languages.ts';
import { idOf } from '../../core/records/make.ts';

const place = { project: idOf(1), order: 2 };
/** A change in figures as its writer would say it. */
const sayLine = ({ line, by }: StructuredChange) => `${line} by ${by?.amount}`;
const round: Round = {
  ...place,
  name: 'Round 2',
  stage: 'wear-test-samples',
  changes: [
    { part: 'upper-pattern', what: 'Collar higher', mends: { kind: 'heel-slip', zone: 'U10' } },
  ],
  foam: 'eva',
  midsole: { name: 'E-24', hardness: { value: 45, unit: 'asker-c' } },
  outsole: { name: 'R7' },
  blueprint: [
    {
      measure: 'dimension',
      site: 'back-height',
      unit: 'mm',
      nominal: 70,
      lower: -2,
      upper: 1.5,
      foot: 'left',
      leftRight: 2,
      ofANewerApp: true,
    },
  ],
  last: { name: 'L8', sizeMm: mm(270), lengthMm: mm(283), widthPerStepMm: mm(1.5), maker: 'x' },
  layers: [{ zone: 'U4', count: 3 }],
  words: 'kept',
};

/** A dimension that lacks its nominal alone. */
const heel: DimensionDraft = {
  ...emptyDimension,
  measure: 'stack-height',
  site: 'heel-centre',
  unit: 'mm',
  lower: '1',
  upper: '1',
};

describe('a round’s draft', () => {
  it('reads back to the same round, with what no form knows', () => {
    const read = readDraft(draftOfRound(round), round, place, sayLine);
    expect(read).toEqual({ ok: true, body: round });
    expect(read.ok && readBody('round', read.body).ok).toBe(true);
  });

  it('lets go of what is cleared', () => {
    const draft = draftOfRound(round);
    const [dimension] = draft.dimensions;
    const read = readDraft(
      {
        ...draft,
        foam: 'unsaid',
        dimensions: dimension ? [{ ...dimension, foot: 'both', leftRight: ' ' }] : [],
        last: { ...draft.last, lengthMm: '' },
        layers: { U4: '' },
      },
      round,
      place,
      sayLine,
    );
    if (!read.ok) throw new Error(JSON.stringify(read.troubles));
    expect(read.body).not.toHaveProperty('foam');
    expect(read.body).not.toHaveProperty('layers');
    expect(read.body.blueprint[0]).not.toHaveProperty('foot');
    expect(read.body.blueprint[0]).not.toHaveProperty('leftRight');
    expect(read.body.blueprint[0]).toHaveProperty('ofANewerApp');
    expect(read.body.last).toEqual({ name: 'L8', sizeMm: 270, widthPerStepMm: 1.5, maker: 'x' });
  });

  it('keeps the zone of a mended complaint only with its kind', () => {
    const draft = draftOfRound(round);
    const other = draft.changes.map((one) => ({ ...one, mends: 'rubbing' as const }));
    const read = readDraft({ ...draft, changes: other }, round, place, sayLine);
    expect(read.ok && read.body.changes[0]?.mends).toEqual({ kind: 'rubbing' });
  });

  it('takes tolerances in percent of nominal', () => {
    const mass = practiceDimensions.find(({ measure }) => measure === 'mass');
    if (!mass) throw new Error('no mass');
    const draft = { ...draftOfPractice(mass), nominal: '252' };
    const read = readDraft({ ...draftOfRound(round), dimensions: [draft] }, null, place, sayLine);
    expect(read.ok && read.body.blueprint[0]).toMatchObject({
      lower: -12.6,
      upper: 12.6,
      unit: 'g',
    });
  });

  it('names the part, or the dimension and its field, that cannot be read', () => {
    const draft = draftOfRound(round);
    const of = (part: object) => {
      const read = readDraft({ ...draft, ...part }, round, place, sayLine);
      return read.ok ? undefined : read.troubles[0];
    };
    expect(of({ name: ' ' })).toEqual({ part: 'name' });
    const [good] = draft.dimensions;
    for (const [wrong, field] of [
      [heel, 'nominal'],
      [{ ...heel, nominal: '36', lower: '+2' }, 'upper'],
      [{ ...heel, nominal: '36', lower: '' }, 'lower'],
      [{ ...heel, nominal: '36', leftRight: '-1' }, 'leftRight'],
      [{ ...heel, nominal: '36', site: 'Heel Centre' }, 'site'],
    ] as const)
      expect(of({ dimensions: [good, wrong] })).toMatchObject({
        part: 'blueprint',
        at: 1,
        field,
      });
    expect(of({ last: { ...draft.last, name: '' } })).toMatchObject({ part: 'last' });
    expect(of({ last: { ...draft.last, sizeMm: 'x' } })).toMatchObject({ part: 'last' });
    expect(of({ layers: { U4: '1.5' } })).toMatchObject({ part: 'layers' });
  });

  it('names all of them at once', () => {
    const draft = draftOfRound(round);
    const read = readDraft(
      {
        ...draft,
        name: '',
        sole: { ...draft.sole, outsole: { ...draft.sole.outsole, hardness: 'x' } },
        dimensions: [{ ...heel, site: 'Heel Centre', lower: 'x' }],
        last: { ...draft.last, name: '', sizeMm: '27' },
        layers: { U4: '1.5', U9: '2', U1: 'x' },
      },
      round,
      place,
      sayLine,
    );
    expect(!read.ok && read.troubles).toMatchObject([
      { part: 'name' },
      { part: 'sole', of: 'outsole' },
      { part: 'blueprint', at: 0, field: 'site' },
      { part: 'blueprint', at: 0, field: 'nominal' },
      { part: 'blueprint', at: 0, field: 'lower' },
      { part: 'last', field: 'sizeMm' },
      { part: 'last', field: 'name' },
      { part: 'layers', zone: 'U4' },
      { part: 'layers', zone: 'U1' },
    ]);
  });

  it('says what a figure can be that cannot be as it was typed', () => {
    const draft = draftOfRound(round);
    const of = (part: object) => {
      const read = readDraft({ ...draft, ...part }, round, place, sayLine);
      return read.ok ? undefined : read.troubles[0];
    };
    const dimension = (part: object) => of({ dimensions: [{ ...heel, nominal: '36', ...part }] });
    expect(dimension({ nominal: '360' })).toMatchObject({
      field: 'nominal',
      range: { least: 1, most: 100, unit: 'mm' },
    });
    expect(dimension({ upper: '500' })).toMatchObject({ field: 'upper', range: { most: 100 } });
    expect(dimension({ lower: '-5e8' })).toMatchObject({ field: 'lower' });
    expect(of({ last: { ...draft.last, sizeMm: '27' } })).toMatchObject({
      field: 'sizeMm',
      range: { least: 100, most: 400, unit: 'mm' },
    });
    expect(of({ layers: { U4: '500' } })).toMatchObject({ part: 'layers' });
  });

  it('offers each usual dimension once, and every one has a name in every language', () => {
    const draft = draftOfRound(round);
    const left = usualLeft(draft).map((at) => practiceDimensions[at]?.site);
    expect(left).not.toContain('back-height');
    expect(left).toHaveLength(practiceDimensions.length - 1);
    for (const language of languages)
      for (const { site } of practiceDimensions)
        expect(
          languageFile(language).desk.blueprint.sites[site],
          `${language} ${site}`,
        ).toBeTruthy();
  });
});

describe('taking over an earlier round', () => {
  const empty = draftOfRound(null);

  it('brings its blueprint, last and layers, and nothing else', () => {
    const { dimensions, last, layers } = draftOfRound(round);
    expect(takeOver({ ...empty, name: 'Round 3' }, round)).toEqual({
      ...empty,
      name: 'Round 3',
      dimensions,
      last,
      layers,
    });
  });

  it('begins the next round with the foam and the rubber of the one before', () => {
    expect(newRound('Round 3', { ...round, foam: 'tpu' })).toEqual({
      ...empty,
      name: 'Round 3',
      foam: 'tpu',
      sole: draftOfRound(round).sole,
    });
    expect(newRound('Round 1', null)).toEqual({ ...empty, name: 'Round 1' });
  });

  it('leaves what is typed, and adds no dimension twice', () => {
    const [dimension] = draftOfRound(round).dimensions;
    const typed = {
      ...empty,
      dimensions: dimension ? [{ ...dimension, nominal: '72' }, heel] : [],
      last: { ...empty.last, name: 'L9' },
      layers: { U4: '5' },
    };
    expect(takeOver(typed, round)).toEqual(typed);
  });

  it('is offered only where there is something to take', () => {
    expect(canBeTakenOver(round)).toBe(true);
    const { last: _last, layers: _layers, ...bare } = round;
    expect(canBeTakenOver({ ...bare, blueprint: [] })).toBe(false);
  });
});

describe('a round as the last one', () => {
  it('takes everything over but its name and its changes', () => {
    const draft = duplicateOf(round, 'Round 3');
    const read = readDraft(draft, null, { ...place, order: 3 }, sayLine);
    const { changes: _changes, words: _words, ...same } = round;
    // The maker of the last is known to the round alone, as no form asks for it.
    const { maker: _maker, ...last } = { maker: '', ...round.last };
    expect(read).toEqual({
      ok: true,
      body: { ...same, last, name: 'Round 3', order: 3, changes: [] },
    });
  });
});

describe('the first round of a project that begins as another', () => {
  it('is built as the other’s latest, without what changed and what was written there', () => {
    const first = firstRoundLike({ ...round, compoundOfANewerApp: 'A60' }, idOf(7), 'Round 1');
    expect(first).toEqual({
      project: idOf(7),
      name: 'Round 1',
      order: 1,
      stage: 'first-samples',
      changes: [],
      foam: round.foam,
      midsole: round.midsole,
      outsole: round.outsole,
      blueprint: round.blueprint,
      last: round.last,
      layers: round.layers,
      compoundOfANewerApp: 'A60',
    });
    expect(readBody('round', first).ok).toBe(true);
  });
});

describe('a change in figures', () => {
  const collar: StructuredChange = {
    part: 'upper-pattern',
    line: 'collar',
    side: 'lateral',
    direction: 'higher',
    by: { amount: 3, unit: 'mm' },
    limit: { measure: 'stack-height', site: 'heel-centre' },
  };
  const with3 = { ...round, changes: [{ ...round.changes[0], structured: collar }] } as Round;
  const draft = draftOfRound(with3);
  const [change = emptyChange] = draft.changes;
  const readOf = (part: Partial<typeof change>, old: Round | null = with3) =>
    readDraft({ ...draft, changes: [{ ...change, ...part }] }, old, place, sayLine);
  const changeOf = (part: Partial<typeof change>) => {
    const read = readOf(part);
    return read.ok ? read.body.changes[0] : undefined;
  };

  it('comes back as it was, with what a newer app wrote into it', () => {
    expect(readOf({})).toEqual({ ok: true, body: with3 });
    const newer = { ...collar, measuredBy: 'x' };
    const body = { ...with3, changes: [{ ...with3.changes[0], structured: newer }] } as Round;
    expect(readDraft(draftOfRound(body), body, place, sayLine)).toEqual({ ok: true, body });
  });

  it('is read beside the words, follows the part of the change, and names the limit', () => {
    expect(changeOf({ part: 'last', limit: 'hardness forefoot-centre' })?.structured).toEqual({
      ...collar,
      part: 'last',
      limit: { measure: 'hardness', site: 'forefoot-centre' },
    });
    expect(changeOf({ limit: '' })?.structured).not.toHaveProperty('limit');
    expect(changeOf({ limit: 'mass ' })?.structured?.limit).toEqual({ measure: 'mass' });
  });

  it('said alone is put into words by its writer', () => {
    expect(changeOf({ what: ' ' })?.what).toBe('collar by 3');
    expect(changeOf({ what: 'Mine' })?.what).toBe('Mine');
  });

  it('is let go of where nothing is said any more, and a row without anything is no change', () => {
    const cleared = {
      ...change.figures,
      what: '',
      direction: '' as const,
      amount: '',
      side: '' as const,
    };
    expect(changeOf({ figures: cleared })).toEqual(round.changes[0]);
    const read = readOf({ what: '', figures: cleared });
    expect(read.ok && read.body.changes).toEqual([]);
  });

  it('that is half said or cannot be is told with its row', () => {
    const figures = { ...change.figures, direction: '' as const, amount: '99999' };
    const read = readDraft(
      { ...draft, changes: [change, { ...change, figures }] },
      with3,
      place,
      sayLine,
    );
    expect(!read.ok && read.troubles).toMatchObject([
      { part: 'changes', at: 1, field: 'direction' },
      { part: 'changes', at: 1, field: 'amount' },
    ]);
  });
});
