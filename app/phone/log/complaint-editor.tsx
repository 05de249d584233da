/** One complaint after the other: where (map or list), what it was like, how much, from when. */
import { useEffect, useRef, useState } from 'preact/hooks';
import {
  kindsForZone,
  zonesOfView,
  type FootView,
  type ZoneCode,
} from '../../../core/foot/index.ts';
import type { Foot } from '../../../core/records/index.ts';
import type { DistanceUnit } from '../../../core/units/index.ts';
import { Button, Choice, Field, Ten } from '../../parts/controls/controls.tsx';
import { FootMap, zoneKey } from '../../parts/foot-map/foot-map.tsx';
import { clauses, t, terms } from '../../words/index.ts';
import { PhotoPicker } from '../../parts/photos/photo-picker.tsx';
import { revealWhole, useReveal } from '../../parts/reveal.ts';
import { openComplaint, type ComplaintForm, type OpenComplaint } from '../../drafts/run.ts';
import '../../parts/foot-map/foot-map.css';
import './complaint-editor.css';

const zoneName = (zone: ZoneCode): string => terms().zones[zone].name;

export const ComplaintEditor = (props: {
  readonly complaints: readonly ComplaintForm[];
  readonly open: OpenComplaint | null;
  readonly unit: DistanceUnit;
  readonly wrongKind: string | null;
  /** The person has just asked for it: the map comes into view, whole. */
  readonly asked: boolean;
  readonly onOpen: (open: OpenComplaint) => void;
  readonly onDone: () => void;
}) => {
  const words = t();
  const [view, setView] = useState<FootView>('upper');
  const { open } = props;
  const start = (foot: Foot, zone: ZoneCode) => props.onOpen(openComplaint(foot, zone));
  const selected = new Set(props.complaints.map(({ foot, zone }) => zoneKey(foot, zone)));
  if (open) selected.add(zoneKey(open.foot, open.zone));

  const sheet = useRef<HTMLDivElement>(null);
  const map = useRef<HTMLDivElement>(null);
  const shown = useRef(props.asked ? -1 : props.complaints.length);
  useEffect(() => {
    if (props.complaints.length > shown.current) revealWhole(sheet.current, map.current);
    shown.current = props.complaints.length;
  }, [props.complaints.length]);
  const details = useReveal<HTMLDivElement>(open && zoneKey(open.foot, open.zone));

  return (
    <div class="sheet complaint-sheet" ref={sheet}>
      <h3>{words.complaint.title}</h3>
      <div class="complaint-map" ref={map}>
        <FootMap
          view={view}
          mode="pick"
          selected={selected}
          onPick={start}
          names={zoneName}
          labels={{
            left: words.left,
            right: words.right,
            sole: words.sole,
            upper: words.upper,
            joined: words.joined,
          }}
        />
      </div>
      <Choice
        hideLabel
        label={words.complaint.tapWhere}
        options={[
          { value: 'upper', label: words.upper },
          { value: 'sole', label: words.sole },
        ]}
        value={view}
        onChange={setView}
      />
      <Field label={words.complaint.list}>
        {(ids) => (
          <select
            class="input"
            {...ids}
            value={open ? zoneKey(open.foot, open.zone) : ''}
            onChange={(event) => {
              const [foot, zone] = event.currentTarget.value.split(':');
              if (foot && zone) start(foot as Foot, zone as ZoneCode);
            }}
          >
            <option value="">{words.complaint.tapWhere}</option>
            {(['left', 'right'] as const).map((foot) => (
              <optgroup key={foot} label={words.foot[foot]}>
                {[...zonesOfView('upper'), ...zonesOfView('sole')].map((zone) => (
                  <option key={zone} value={zoneKey(foot, zone)}>
                    {clauses(words.foot[foot], zoneName(zone))}
                  </option>
                ))}
              </optgroup>
            ))}
          </select>
        )}
      </Field>
      <div ref={details}>
        {open && (
          <Details
            key={zoneKey(open.foot, open.zone)}
            open={open}
            unit={props.unit}
            wrongKind={props.wrongKind}
            onChange={props.onOpen}
            onDone={props.onDone}
          />
        )}
      </div>
    </div>
  );
};

const Details = (props: {
  readonly open: OpenComplaint;
  readonly unit: DistanceUnit;
  readonly wrongKind: string | null;
  readonly onChange: (open: OpenComplaint) => void;
  readonly onDone: () => void;
}) => {
  const words = t();
  const { open, onChange } = props;
  const { first, also } = kindsForZone(open.zone);
  const [allKinds, setAllKinds] = useState(open.kind !== null && !first.includes(open.kind));
  const offered = allKinds ? [...first, ...also] : first;
  const kinds = useRef<HTMLDivElement>(null);
  const [missed, setMissed] = useState(false);
  const wrong =
    props.wrongKind ?? (missed && open.kind === null ? words.complaint.wrongKind : null);
  const done = () => {
    if (open.kind !== null) return props.onDone();
    setMissed(true);
    kinds.current?.scrollIntoView({ block: 'center' });
  };
  return (
    <div class="stack complaint-open">
      <hr class="stitch" />
      <p>
        <strong>{clauses(words.foot[open.foot], zoneName(open.zone))}</strong>
      </p>
      <div ref={kinds}>
        <Choice
          label={words.complaint.felt}
          options={offered.map((kind) => ({
            value: kind,
            label: terms().kinds[kind].name,
          }))}
          value={open.kind}
          onChange={(kind) => onChange({ ...open, kind })}
        />
      </div>
      {wrong && (
        <p class="field-error" role="alert">
          {wrong}
        </p>
      )}
      {!allKinds && also.length > 0 && (
        <Button kind="quiet" onClick={() => setAllKinds(true)}>
          {words.complaint.otherKinds}
        </Button>
      )}
      <Ten
        label={words.complaint.severity}
        ends={words.complaint.severityEnds}
        value={open.severity}
        onChange={(severity) => onChange({ ...open, severity })}
      />
      <PhotoPicker
        label={clauses(words.foot[open.foot], zoneName(open.zone))}
        photos={open.photos}
        onChange={(photos) => onChange({ ...open, photos: [...photos] })}
      />
      <Field label={words.complaint.from(props.unit)} hint={words.complaint.fromHint}>
        {(ids) => (
          <input
            class="input"
            inputMode="decimal"
            autocomplete="off"
            {...ids}
            value={open.from}
            onInput={(event) => onChange({ ...open, from: event.currentTarget.value })}
          />
        )}
      </Field>
      <Choice
        label={words.complaint.skin}
        options={[
          { value: 'intact', label: words.complaint.intact },
          { value: 'blister', label: words.complaint.blister },
          { value: 'broken', label: words.complaint.broken },
        ]}
        value={open.skin ?? 'intact'}
        onChange={(skin) => onChange({ ...open, skin: skin === 'intact' ? null : skin })}
      />
      <label class="row">
        <input
          type="checkbox"
          class="tick"
          checked={open.bothFeet}
          onChange={(event) => onChange({ ...open, bothFeet: event.currentTarget.checked })}
        />
        {words.complaint.bothFeet}
      </label>
      <Button kind="main" onClick={done}>
        {words.complaint.done}
      </Button>
    </div>
  );
};
