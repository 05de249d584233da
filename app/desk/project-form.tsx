/** A new project begins with its brief. */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { comfortAttributeIds, type ComfortAttributeId } from '../../core/foot/index.ts';
import { surfaces, type Brief, type Surface } from '../../core/records/index.ts';
import { parseDecimal, toMetres } from '../../core/units/index.ts';
import { Choice, Choices } from '../parts/controls/controls.tsx';
import { d, terms } from '../words/index.ts';
import { saveRecord, SmallForm, TextField } from './form-parts.tsx';

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

export const ProjectForm = () => {
  const words = d().brief;
  const { route } = useLocation();
  const [name, setName] = useState('');
  const [runner, setRunner] = useState<Brief['runner']>('neutral');
  const [use, setUse] = useState<Brief['use']>('daily-training');
  const [on, setOn] = useState<ReadonlySet<Surface>>(new Set<Surface>(['road']));
  const [distance, setDistance] = useState('');
  const [asked, setAsked] = useState<ReadonlySet<ComfortAttributeId>>(new Set(usual));

  const save = async () => {
    const km = parseDecimal(distance);
    if (name.trim() === '') return `${words.name}: ${d().missing}`;
    if (km === null || km <= 0) return `${words.distance}: ${d().wrongNumber}`;
    if (on.size === 0) return `${words.surfaces}: ${d().missing}`;
    const saved = await saveRecord('project', {
      name: name.trim(),
      brief: {
        runner,
        use,
        surfaces: surfaces.filter((surface) => on.has(surface)),
        distanceM: toMetres(km, 'km'),
        allowedRate: { complaint: 0.05, pain: 0.01 },
        limits: [],
        attributes: ['overall', ...comfortAttributeIds.filter((one) => asked.has(one))],
      },
    });
    if (!saved) return d().trouble;
    route(`/desk/${saved.revision.id}/rounds`, true);
    return null;
  };
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
      <TextField label={words.distance} value={distance} onInput={setDistance} numeric />
      <Choices
        label={words.attributes}
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
