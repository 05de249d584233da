/** A finding is changed: title, part, urgency, what is wanted, who carries it, how far it is, its photos. */
import { useState } from 'preact/hooks';
import type { PartId } from '../../../core/foot/index.ts';
import { findingStates, type Finding } from '../../../core/records/index.ts';
import { PhotoPicker } from '../../parts/photos/photo-picker.tsx';
import { formatNumber } from '../../parts/format.ts';
import { d } from '../../words/index.ts';
import { saveFromForm, SelectField, SmallForm, TextField } from '../form-parts.tsx';
import {
  PartAndPriority,
  readWanted,
  WantedFields,
  CarrierField,
  type Carrier,
} from './finding-fields.tsx';
import type { FindingProps } from './finding-props.ts';

/** @param props.close what to do once it is saved */
export const EditForm = (props: FindingProps & { readonly close: () => void }) => {
  const { review, finding, close } = props;
  const { body, revision } = finding;
  const words = d().finding;
  const board = d().report.board;
  const [title, setTitle] = useState(body.title);
  const [part, setPart] = useState<PartId>(body.part);
  const [priority, setPriority] = useState<Finding['priority']>(body.priority);
  const [state, setState] = useState<Finding['state']>(body.state);
  const [wanted, setWanted] = useState(body.wanted ?? '');
  const [mm, setMm] = useState(body.wantedMm === undefined ? '' : formatNumber(body.wantedMm, 3));
  const [carriedBy, setCarriedBy] = useState<Carrier>(body.carriedBy ?? 'undecided');
  const [photos, setPhotos] = useState<readonly string[]>(body.photos ?? []);
  const shownBy = review.rounds.find(({ id }) => id === body.round);
  const later = review.rounds.filter(
    ({ id, order }) => id === body.carriedBy || order > (shownBy?.order ?? 0),
  );
  const save = async () => {
    const change = readWanted(wanted, mm);
    if (typeof change === 'string') return change;
    if (title.trim() === '') return `${board.titleField}: ${d().missing}`;
    // The rest of the body, and what this version does not know of it, stays as it is.
    const {
      wanted: _wanted,
      wantedMm: _mm,
      carriedBy: _carriedBy,
      photos: _photos,
      ...rest
    } = body;
    const saved = await saveFromForm(
      'finding',
      {
        ...rest,
        title: title.trim(),
        part,
        priority,
        state,
        ...change,
        ...(carriedBy !== 'undecided' && { carriedBy }),
        ...(photos.length > 0 && { photos: [...photos] }),
      },
      revision.id,
    );
    if (typeof saved === 'string') return saved;
    close();
    return null;
  };
  return (
    <SmallForm save={save}>
      <TextField label={board.titleField} value={title} onInput={setTitle} />
      <div class="field-row">
        <PartAndPriority
          part={part}
          onPart={setPart}
          priority={priority}
          onPriority={setPriority}
        />
        <SelectField
          label={board.state}
          value={state}
          options={findingStates.map((value) => ({ value, label: words.states[value] }))}
          onChange={setState}
        />
        <CarrierField value={carriedBy} rounds={later} onChange={setCarriedBy} />
      </div>
      <WantedFields wanted={wanted} onWanted={setWanted} mm={mm} onMm={setMm} />
      <PhotoPicker label={title} photos={photos} onChange={setPhotos} />
    </SmallForm>
  );
};
