/** The brief of a project, new or changed: for whom, for what, how far, and when a pair has failed. */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { comfortAttributeIds } from '../../../core/foot/index.ts';
import { measures, ranges, surfaces, unitsOf, type RecordOf } from '../../../core/records/index.ts';
import {
  draftOfProject,
  emptyLimit,
  feetFields,
  readProject,
  type LimitDraft,
  type ProjectDraft,
  type ProjectTrouble,
} from '../../drafts/project.ts';
import { Button, Choice, Choices } from '../../parts/controls/controls.tsx';
import { d, t, terms } from '../../words/index.ts';
import { labelOf, saveFromForm, SelectField, SmallForm, TextField } from '../parts/form-parts.tsx';
import { typedIn } from '../../drafts/typed.ts';
import { numberTrouble, sayRange } from '../parts/in-range.ts';

const options = <T extends string>(names: Readonly<Record<T, string>>) =>
  (Object.entries(names) as [T, string][]).map(([value, label]) => ({ value, label }));

const toggled = <T,>(values: ReadonlySet<T>, value: T): ReadonlySet<T> => {
  const next = new Set(values);
  if (!next.delete(value)) next.add(value);
  return next;
};

const inKm = typedIn(ranges.briefDistanceM, 'km', 1 / 1000);
const inPercent = typedIn(ranges.share, '%', 100);

/** A dimension of the blueprint does not wear. */
const wearing = measures.filter((measure) => measure !== 'dimension');

/** What is wrong, with the label of its field. */
const troubleInWords = (trouble: ProjectTrouble, { limits }: ProjectDraft): string => {
  const words = d().brief;
  switch (trouble.field) {
    case 'name':
    case 'surfaces':
      return `${words[trouble.field]}: ${d().missing}`;
    case 'distance':
      return numberTrouble(words.distance, trouble.typed, inKm) ?? words.distance;
    case 'allowed':
    case 'allowedPain':
      return numberTrouble(words[trouble.field], trouble.typed, inPercent) ?? words[trouble.field];
    case 'lengthMm':
      return `${d().blueprint.lengthFrom}, ${d().blueprint.lengthTo}: ${sayRange(ranges.footLengthMm)}`;
    case 'widthMm':
      return `${d().blueprint.widthFrom}, ${d().blueprint.widthTo}: ${sayRange(ranges.footWidthMm)}`;
    case 'limit': {
      const measure = limits[trouble.at]?.measure;
      const title = `${measure ? `${terms().measures[measure]}, ` : ''}${words.value}`;
      return numberTrouble(title, trouble.typed, trouble.range) ?? title;
    }
  }
};

/** @param props.close what to do once a known project is saved; a new one is opened at its rounds */
export const ProjectForm = (props: {
  readonly project?: RecordOf<'project'>;
  readonly close?: () => void;
}) => {
  const { project, close } = props;
  const words = d().brief;
  const { route } = useLocation();
  const [draft, setDraft] = useState(() => draftOfProject(project?.body ?? null));
  const { limits, feet } = draft;
  const change = (part: Partial<ProjectDraft>) => setDraft((now) => ({ ...now, ...part }));
  const changeLimit = (index: number, part: Partial<LimitDraft>) =>
    change({
      limits: limits.map((one, other) => (other === index ? { ...one, ...part } : one)),
    });
  const save = async () => {
    const read = readProject(draft, project?.body ?? null);
    if (!read.ok) return troubleInWords(read.trouble, draft);
    const saved = await saveFromForm('project', read.body, project?.revision.id);
    if (typeof saved === 'string') return saved;
    if (close) close();
    else route(`/desk/${saved.revision.id}/rounds`, true);
    return null;
  };
  return (
    <SmallForm save={save}>
      <TextField label={words.name} value={draft.name} onInput={(name) => change({ name })} />
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
      <div class="field-row">
        <TextField
          label={words.distance}
          value={draft.distance}
          onInput={(distance) => change({ distance })}
          numeric
        />
        <TextField
          label={words.allowed}
          value={draft.allowed}
          onInput={(allowed) => change({ allowed })}
          numeric
        />
        <TextField
          label={words.allowedPain}
          value={draft.allowedPain}
          onInput={(allowedPain) => change({ allowedPain })}
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
            onChange={(measure) => changeLimit(index, { measure })}
          />
          <TextField
            label={d().bench.site}
            optional={words.everySite}
            value={limit.site}
            onInput={(site) => changeLimit(index, { site })}
          />
          <SelectField
            label={words.limits}
            value={limit.bound}
            options={options(words.bounds)}
            onChange={(bound) => changeLimit(index, { bound })}
          />
          <TextField
            label={`${words.value}, ${limit.basis === 'share-of-new' ? '%' : terms().units[unitsOf[limit.measure][0]]}`}
            value={limit.value}
            onInput={(value) => changeLimit(index, { value })}
            numeric
          />
          <SelectField
            label={terms().measures[limit.measure]}
            value={limit.basis}
            options={options(words.bases)}
            onChange={(basis) => changeLimit(index, { basis })}
          />
          <Button
            kind="quiet"
            onClick={() => change({ limits: limits.filter((_, other) => other !== index) })}
          >
            {t().remove}
          </Button>
        </fieldset>
      ))}
      <Button kind="quiet" onClick={() => change({ limits: [...limits, emptyLimit] })}>
        {words.addLimit}
      </Button>
      <Choices
        label={labelOf(words.attributes, true)}
        options={comfortAttributeIds
          .filter((one) => one !== 'overall')
          .map((value) => ({ value, label: terms().attributes[value].name }))}
        values={draft.asked}
        onToggle={(attribute) => change({ asked: toggled(draft.asked, attribute) })}
      />
      <p class="soft small">{words.attributesHint}</p>
    </SmallForm>
  );
};
