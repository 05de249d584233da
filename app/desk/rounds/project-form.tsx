/** The brief of a project, new or changed: for whom, for what, how far, and when a pair has failed. */
import { useState } from 'preact/hooks';
import { questionName } from '../../words/say-question.ts';
import { ranges, surfaces, type Project, type Range } from '../../../core/records/index.ts';
import {
  comfortQuestions,
  draftOfProject,
  emptyLimit,
  feetFields,
  readProject,
  type LimitDraft,
  type ProjectDraft,
  type ProjectTrouble,
} from '../../drafts/project.ts';
import { isAsSaved, limitDoubt, type Drawn, type LimitDoubt } from '../../drafts/limit-doubts.ts';
import { Button, Choice, Choices } from '../../parts/controls/controls.tsx';
import { LimitedField } from '../../parts/controls/limited-field.tsx';
import { d, saidOf, terms } from '../../words/index.ts';
import { labelOf, SmallForm, TextField } from '../parts/form-parts.tsx';
import { typedIn } from '../../drafts/typed.ts';
import { projectSchema } from '../../drafts/kept.ts';
import { sayRange } from '../parts/in-range.ts';
import { useKept } from '../../parts/kept.tsx';
import type { KnownSite } from '../../drafts/limit-sites.ts';
import { LimitRow, type LimitErrors } from './limit-row.tsx';

const options = <T extends string>(names: Readonly<Record<T, string>>) =>
  (Object.entries(names) as [T, string][]).map(([value, label]) => ({ value, label }));

const toggled = <T,>(values: ReadonlySet<T>, value: T): ReadonlySet<T> => {
  const next = new Set(values);
  if (!next.delete(value)) next.add(value);
  return next;
};

const inKm = typedIn(ranges.briefDistanceM, 'km', 1 / 1000);
const inPercent = typedIn(ranges.share, '%', 100);

/** What is wrong with each field, in words; of the limits by their place. */
const errorsOf = (troubles: readonly ProjectTrouble[]) => {
  const words = d().brief;
  const fields: Partial<Record<Exclude<ProjectTrouble['field'], 'limit' | 'site'>, string>> = {};
  const limits = new Map<number, LimitErrors>();
  const number = (typed: number | null, range: Range) =>
    typed === null ? d().wrongNumber : sayRange(range);
  for (const trouble of troubles)
    switch (trouble.field) {
      case 'name':
      case 'surfaces':
        fields[trouble.field] = d().missing;
        break;
      case 'distance':
        fields.distance = number(trouble.typed, inKm);
        break;
      case 'allowed':
      case 'allowedPain':
        fields[trouble.field] = number(trouble.typed, inPercent);
        break;
      case 'lengthMm':
        fields.lengthMm = `${words.fromTo} ${sayRange(ranges.footLengthMm)}`;
        break;
      case 'widthMm':
        fields.widthMm = `${words.fromTo} ${sayRange(ranges.footWidthMm)}`;
        break;
      case 'limit':
        limits.set(trouble.at, {
          ...limits.get(trouble.at),
          value: number(trouble.typed, trouble.range),
        });
        break;
      case 'site':
        limits.set(trouble.at, {
          ...limits.get(trouble.at),
          site: saidOf(d().bench.site, d().bench.tableTroubles['no-site']),
        });
    }
  return { fields, limits };
};

/** A limit by what it says: one that was called right is asked about again once it says something else. */
const keyOf = ({ measure, site, bound, basis, value }: LimitDraft): string =>
  [measure, site, bound, basis, value].join(' ');

export const ProjectForm = (props: {
  /** What it begins as; null: from nothing. */
  readonly from: Project | null;
  /** Of the latest round. */
  readonly blueprint: readonly Drawn[];
  /** Where else the shoe is measured already. */
  readonly measured?: readonly KnownSite[];
  /** Under which name what is typed is kept on the device, and the stamp of the project that is changed. */
  readonly keptAs: { readonly key: string; readonly of?: string };
  /** Saves, calls `done` once it has, and answers the trouble, or null. */
  readonly save: (body: Project, done: () => Promise<void>) => Promise<string | null>;
}) => {
  const { from, blueprint, measured = [] } = props;
  const known = [...blueprint, ...measured];
  const words = d().brief;
  const kept = useKept<ProjectDraft>({
    ...props.keptAs,
    schema: projectSchema,
    begin: () => draftOfProject(from),
  });
  const { draft, setDraft } = kept;
  /** Saving was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const [sure, setSure] = useState<ReadonlySet<string>>(new Set());
  const { limits, feet } = draft;
  const read = readProject(draft, from);
  const errors = errorsOf(tried && !read.ok ? read.troubles : []);
  const asksAbout = (limit: LimitDraft): LimitDoubt | null =>
    sure.has(keyOf(limit)) ? null : limitDoubt(limit, blueprint);
  /** Not while it is typed: the first figure of a number is often a strange one. */
  const doubtAt = (limit: LimitDraft) => (tried || isAsSaved(limit) ? asksAbout(limit) : null);
  const change = (part: Partial<ProjectDraft>) => setDraft((now) => ({ ...now, ...part }));
  const changeLimit = (index: number, part: Partial<LimitDraft>) =>
    change({
      limits: limits.map((one, other) => (other === index ? { ...one, ...part } : one)),
    });
  const { lengthMm, widthMm } = errors.fields;
  const feetErrors = {
    lengthFrom: lengthMm,
    lengthTo: lengthMm,
    widthFrom: widthMm,
    widthTo: widthMm,
  };
  const save = async () => {
    setTried(true);
    if (!read.ok || limits.some((one) => !isAsSaved(one) && asksAbout(one))) return '';
    return props.save(read.body, kept.done);
  };
  return (
    <SmallForm save={save} kept={kept}>
      <TextField
        label={words.name}
        value={draft.name}
        onInput={(name) => change({ name })}
        error={errors.fields.name}
      />
      <Choice
        label={words.runner}
        options={options(terms().runners)}
        value={draft.runner}
        onChange={(runner) => change({ runner })}
      />
      <Choice
        label={words.use}
        options={options(terms().uses)}
        value={draft.use}
        onChange={(use) => change({ use })}
      />
      <Choices
        label={words.surfaces}
        options={surfaces.map((value) => ({ value, label: terms().surfaces[value] }))}
        values={draft.on}
        onToggle={(surface) => change({ on: toggled(draft.on, surface) })}
      />
      {errors.fields.surfaces && (
        <p class="field-error" aria-invalid tabIndex={-1}>
          {errors.fields.surfaces}
        </p>
      )}
      <div class="field-row">
        <TextField
          label={words.distance}
          value={draft.distance}
          onInput={(distance) => change({ distance })}
          error={errors.fields.distance}
          numeric
        />
        <TextField
          label={words.allowed}
          value={draft.allowed}
          onInput={(allowed) => change({ allowed })}
          error={errors.fields.allowed}
          numeric
        />
        <TextField
          label={words.allowedPain}
          value={draft.allowedPain}
          onInput={(allowedPain) => change({ allowedPain })}
          error={errors.fields.allowedPain}
          numeric
        />
      </div>
      <h2>{labelOf(d().blueprint.briefFeet, true)}</h2>
      <div class="field-row">
        {feetFields.map((field) => (
          <TextField
            key={field}
            label={d().blueprint[field]}
            value={feet[field]}
            onInput={(value) => change({ feet: { ...feet, [field]: value } })}
            error={feetErrors[field]}
            numeric
            required={false}
          />
        ))}
      </div>
      <h2>{words.limits}</h2>
      {limits.map((limit, index) => (
        <LimitRow
          key={index}
          at={index}
          limit={limit}
          known={known}
          errors={errors.limits.get(index) ?? {}}
          doubt={doubtAt(limit)}
          onChange={(part) => changeLimit(index, part)}
          onRemove={() => change({ limits: limits.filter((_, other) => other !== index) })}
          onSure={() => setSure(new Set([...sure, keyOf(limit)]))}
        />
      ))}
      <Button kind="quiet" onClick={() => change({ limits: [...limits, emptyLimit] })}>
        {words.addLimit}
      </Button>
      <Choices
        label={labelOf(words.attributes, true)}
        options={comfortQuestions
          .filter((one) => one !== 'overall')
          .map((value) => ({ value, label: questionName(terms(), value) }))}
        values={draft.asked}
        onToggle={(attribute) => change({ asked: toggled(draft.asked, attribute) })}
      />
      <p class="soft small">{words.attributesHint}</p>
      <LimitedField
        label={labelOf(words.forTesters, true)}
        rows={4}
        most={4000}
        value={draft.forTesters}
        onInput={(forTesters) => change({ forTesters })}
      />
      <p class="soft small">{words.forTestersHint}</p>
      <label class="row">
        <input
          type="checkbox"
          class="tick"
          checked={draft.tellTesters}
          onChange={() => change({ tellTesters: !draft.tellTesters })}
        />
        {words.tellTesters}
      </label>
      <p class="soft small">{words.tellTestersHint}</p>
    </SmallForm>
  );
};
