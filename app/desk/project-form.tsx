/** The brief of a project, new or changed: for whom, for what, how far, and when a pair has failed. */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { comfortAttributeIds, type ComfortAttributeId } from '../../core/foot/index.ts';
import {
  isIn,
  measures,
  rangeOf,
  ranges,
  surfaces,
  unitsOf,
  type Brief,
  type Limit,
  type Measure,
  type Range,
  type RecordOf,
  type Surface,
} from '../../core/records/index.ts';
import { fromMetres, millimetres, parseDecimal, toMetres } from '../../core/units/index.ts';
import { Button, Choice, Choices } from '../parts/controls/controls.tsx';
import { d, t, terms } from '../words/index.ts';
import { labelOf, saveFromForm, SelectField, SmallForm, TextField } from './form-parts.tsx';
import { numberTrouble, sayRange, typedIn } from './in-range.ts';

/** Asked unless the lead takes them out: the items of published comfort tools. */
const usual: readonly ComfortAttributeId[] = [
  'heel-cushioning',
  'forefoot-cushioning',
  'stability',
  'flexibility',
  'toe-room',
  'heel-hold',
];

const options = <T extends string>(names: Readonly<Record<T, string>>) =>
  (Object.entries(names) as [T, string][]).map(([value, label]) => ({ value, label }));

const toggled = <T,>(values: ReadonlySet<T>, value: T): ReadonlySet<T> => {
  const next = new Set(values);
  if (!next.delete(value)) next.add(value);
  return next;
};

const inKm = typedIn(ranges.briefDistanceM, 'km', 1 / 1000);
const inPercent = typedIn(ranges.share, '%', 100);
/** A limit may lie above what a new pair has: stiffness grows. Judgement, no source. */
const sharesOfNew: Range = { least: 0, most: 1000, unit: '%' };

/** A dimension of the blueprint does not wear. */
const wearing = measures.filter((measure) => measure !== 'dimension');

interface LimitForm {
  readonly measure: Measure;
  readonly site: string;
  readonly bound: Limit['bound'];
  readonly basis: Limit['basis'];
  /** As typed: percent where the basis is the value when new. */
  readonly value: string;
  /** What it was before it was changed, with any field of a newer app. */
  readonly old?: Limit;
}

const emptyLimit: LimitForm = {
  measure: 'energy-absorbed',
  site: 'heel-centre',
  bound: 'at-least',
  basis: 'share-of-new',
  value: '',
};

/** Tens of thousandths do not come back from percent as binary fractions do. */
const tidy = (value: number): number => Number(value.toPrecision(12));

const typedLimit = (old: Limit): LimitForm => {
  const { measure, site, bound, basis, value } = old;
  return {
    old,
    measure,
    site: site ?? '',
    bound,
    basis,
    value: String(basis === 'share-of-new' ? tidy(100 * value) : value),
  };
};

/** From and to of the feet that the shoe is for, as typed. */
interface FeetForm {
  readonly lengthFrom: string;
  readonly lengthTo: string;
  readonly widthFrom: string;
  readonly widthTo: string;
}
const feetFields = ['lengthFrom', 'lengthTo', 'widthFrom', 'widthTo'] as const;

const typedFeet = (feet: Brief['feet']): FeetForm => {
  const [lengthFrom = '', lengthTo = ''] = feet?.lengthMm?.map(String) ?? [];
  const [widthFrom = '', widthTo = ''] = feet?.widthMm?.map(String) ?? [];
  return { lengthFrom, lengthTo, widthFrom, widthTo };
};

/** Undefined: not said; null: no range. */
const feetFromTo = (from: string, to: string, range: Range) => {
  if (from.trim() === '' && to.trim() === '') return undefined;
  const [least, most] = [parseDecimal(from), parseDecimal(to)];
  return least === null ||
    most === null ||
    !isIn(least, range) ||
    !isIn(most, range) ||
    most <= least
    ? null
    : ([millimetres(least), millimetres(most)] as [
        ReturnType<typeof millimetres>,
        ReturnType<typeof millimetres>,
      ]);
};

export const ProjectForm = ({ project }: { readonly project?: RecordOf<'project'> }) => {
  const words = d().brief;
  const { route } = useLocation();
  const old = project?.body.brief;
  const [name, setName] = useState(project?.body.name ?? '');
  const [runner, setRunner] = useState<Brief['runner']>(old?.runner ?? 'neutral');
  const [use, setUse] = useState<Brief['use']>(old?.use ?? 'daily-training');
  const [on, setOn] = useState<ReadonlySet<Surface>>(new Set<Surface>(old?.surfaces ?? ['road']));
  const [distance, setDistance] = useState(
    old ? String(tidy(fromMetres(old.distanceM, 'km'))) : '',
  );
  const [allowed, setAllowed] = useState(String(tidy(100 * (old?.allowedRate.complaint ?? 0.05))));
  const [pain, setPain] = useState(String(tidy(100 * (old?.allowedRate.pain ?? 0.01))));
  const [feet, setFeet] = useState(() => typedFeet(old?.feet));
  const [limits, setLimits] = useState<readonly LimitForm[]>(old?.limits.map(typedLimit) ?? []);
  const [asked, setAsked] = useState<ReadonlySet<ComfortAttributeId>>(
    new Set(old?.attributes ?? usual),
  );

  const readLimits = (): Limit[] | string => {
    const read: Limit[] = [];
    for (const { measure, site, bound, basis, value, old: before } of limits) {
      const number = parseDecimal(value);
      const title = `${terms().measures[measure]}, ${words.value}`;
      const possible = basis === 'share-of-new' ? sharesOfNew : rangeOf(measure);
      const wrong = numberTrouble(title, number !== null && number <= 0 ? null : number, possible);
      if (wrong !== null || number === null) return wrong ?? title;
      const { site: _site, ...known } = before ?? {};
      read.push({
        ...known,
        measure,
        bound,
        basis,
        value: basis === 'share-of-new' ? tidy(number / 100) : number,
        ...(site.trim() !== '' && { site: site.trim() }),
      });
    }
    return read;
  };

  const save = async () => {
    const km = parseDecimal(distance);
    const [rate, painRate] = [parseDecimal(allowed), parseDecimal(pain)];
    if (name.trim() === '') return `${words.name}: ${d().missing}`;
    const wrong = numberTrouble(words.distance, km, inKm);
    if (wrong !== null || km === null) return wrong;
    if (on.size === 0) return `${words.surfaces}: ${d().missing}`;
    const wrongRate =
      numberTrouble(words.allowed, rate, inPercent) ??
      numberTrouble(words.allowedPain, painRate, inPercent);
    if (wrongRate !== null || rate === null || painRate === null) return wrongRate;
    const lengthMm = feetFromTo(feet.lengthFrom, feet.lengthTo, ranges.footLengthMm);
    const widthMm = feetFromTo(feet.widthFrom, feet.widthTo, ranges.footWidthMm);
    if (lengthMm === null)
      return `${d().blueprint.lengthFrom}, ${d().blueprint.lengthTo}: ${sayRange(ranges.footLengthMm)}`;
    if (widthMm === null)
      return `${d().blueprint.widthFrom}, ${d().blueprint.widthTo}: ${sayRange(ranges.footWidthMm)}`;
    const { lengthMm: _length, widthMm: _width, ...keptFeet } = old?.feet ?? {};
    const { feet: _feet, ...kept } = old ?? {};
    const read = readLimits();
    if (typeof read === 'string') return read;
    const saved = await saveFromForm(
      'project',
      {
        ...project?.body,
        name: name.trim(),
        brief: {
          ...kept,
          runner,
          use,
          surfaces: surfaces.filter((surface) => on.has(surface)),
          distanceM: toMetres(km, 'km'),
          allowedRate: {
            ...old?.allowedRate,
            complaint: tidy(rate / 100),
            pain: tidy(painRate / 100),
          },
          limits: read,
          ...((old?.feet ?? lengthMm ?? widthMm) !== undefined && {
            feet: { ...keptFeet, ...(lengthMm && { lengthMm }), ...(widthMm && { widthMm }) },
          }),
          attributes: [
            'overall',
            ...comfortAttributeIds.filter((one) => one !== 'overall' && asked.has(one)),
          ],
        },
      },
      project?.revision.id,
    );
    if (typeof saved === 'string') return saved;
    route(`/desk/${saved.revision.id}/rounds`, true);
    return null;
  };
  const change = (index: number, part: Partial<LimitForm>) =>
    setLimits(limits.map((one, other) => (other === index ? { ...one, ...part } : one)));
  return (
    <SmallForm save={save}>
      <TextField label={words.name} value={name} onInput={setName} />
      <Choice
        label={words.runner}
        options={options(terms().runners)}
        value={runner}
        onChange={setRunner}
      />
      <Choice label={words.use} options={options(terms().uses)} value={use} onChange={setUse} />
      <Choices
        label={words.surfaces}
        options={surfaces.map((value) => ({ value, label: terms().surfaces[value] }))}
        values={on}
        onToggle={(surface) => setOn(toggled(on, surface))}
      />
      <div class="field-row">
        <TextField label={words.distance} value={distance} onInput={setDistance} numeric />
        <TextField label={words.allowed} value={allowed} onInput={setAllowed} numeric />
        <TextField label={words.allowedPain} value={pain} onInput={setPain} numeric />
      </div>
      <h2>{labelOf(d().blueprint.briefFeet, true)}</h2>
      <div class="field-row">
        {feetFields.map((field) => (
          <TextField
            key={field}
            label={d().blueprint[field]}
            value={feet[field]}
            onInput={(value) => setFeet({ ...feet, [field]: value })}
            numeric
            required={false}
          />
        ))}
      </div>
      <h2>{words.limits}</h2>
      {limits.map((limit, index) => (
        <fieldset class="field-row reading" key={index}>
          <legend class="hidden-words">{`${words.value} ${index + 1}`}</legend>
          <SelectField
            label={d().bench.reading}
            value={limit.measure}
            options={wearing.map((value) => ({ value, label: terms().measures[value] }))}
            onChange={(measure) => change(index, { measure })}
          />
          <TextField
            label={d().bench.site}
            optional={words.everySite}
            value={limit.site}
            onInput={(site) => change(index, { site })}
          />
          <SelectField
            label={words.limits}
            value={limit.bound}
            options={options(words.bounds)}
            onChange={(bound) => change(index, { bound })}
          />
          <TextField
            label={`${words.value}, ${limit.basis === 'share-of-new' ? '%' : terms().units[unitsOf[limit.measure][0]]}`}
            value={limit.value}
            onInput={(value) => change(index, { value })}
            numeric
          />
          <SelectField
            label={terms().measures[limit.measure]}
            value={limit.basis}
            options={options(words.bases)}
            onChange={(basis) => change(index, { basis })}
          />
          <Button
            kind="quiet"
            onClick={() => setLimits(limits.filter((_, other) => other !== index))}
          >
            {t().remove}
          </Button>
        </fieldset>
      ))}
      <Button kind="quiet" onClick={() => setLimits([...limits, emptyLimit])}>
        {words.addLimit}
      </Button>
      <Choices
        label={labelOf(words.attributes, true)}
        options={comfortAttributeIds
          .filter((one) => one !== 'overall')
          .map((value) => ({ value, label: terms().attributes[value].name }))}
        values={asked}
        onToggle={(attribute) => setAsked(toggled(asked, attribute))}
      />
      <p class="soft small">{words.attributesHint}</p>
    </SmallForm>
  );
};
