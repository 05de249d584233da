/** The foot maps of one round or of two side by side, coloured and hatched by the share of testers. */
import { useRef, useState } from 'preact/hooks';
import {
  complaintKinds,
  type ComplaintKind,
  type FootView,
  type ZoneCode,
} from '../../../core/foot/index.ts';
import type { Foot } from '../../../core/records/index.ts';
import type { RoundSummary } from '../../../core/review/index.ts';
import { Button, Choice } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { FootMap, zoneKey } from '../../parts/foot-map/foot-map.tsx';
import { HeatLegend } from '../../parts/foot-map/heat-legend.tsx';
import { heatOfZones } from '../../parts/foot-map/heat.ts';
import { formatDate, formatPercent } from '../../parts/format.ts';
import { pictureOf, pngFile, svgFile } from '../../parts/picture.ts';
import { sendFile } from '../../parts/send-file.ts';
import { d, t, terms } from '../../words/index.ts';
import { useWork, type TabProps } from '../desk-state.ts';
import { SelectField } from '../form-parts.tsx';

type Times = 'once' | 'twice';

export const ComplaintMaps = (
  props: TabProps & {
    /** The one that is looked at, and the one beside it if there is one. */
    readonly rounds: readonly RoundSummary[];
    readonly open: { readonly foot: Foot; readonly zone: ZoneCode } | null;
    readonly onPick: (foot: Foot, zone: ZoneCode) => void;
    /** The kind that is looked at. */
    readonly kind: ComplaintKind | 'any';
    readonly onKind: (kind: ComplaintKind | 'any') => void;
  },
) => {
  const { review, records, rounds, open, kind } = props;
  const words = d().complaints;
  const [view, setView] = useState<FootView>('upper');
  const [times, setTimes] = useState<Times>('twice');
  const columns = useRef<HTMLDivElement>(null);
  const legend = useRef<HTMLDivElement>(null);
  const project = review.project.id;
  const zones = useWork(
    (desk) =>
      Promise.all(rounds.map(({ id }) => desk.zones(project, id, kind === 'any' ? null : kind))),
    records,
    [kind, rounds.map(({ id }) => id).join()],
  );
  const named = kind === 'any' ? words.any : terms().kinds[kind].name;
  const often = times === 'once' ? words.once : words.twiceOrMore;
  const titleOf = ({ name, complaints: { asked } }: RoundSummary) =>
    `${name}. ${words.mapTitle(often, named, asked.testers, asked.runs)}`;

  const save = async (form: 'SVG' | 'PNG') => {
    const maps = [...(columns.current?.querySelectorAll('.foot-map') ?? [])];
    const below = legend.current?.querySelector('.foot-map');
    if (maps.length === 0 || !below || !zones) return;
    try {
      const picture = pictureOf({
        title: review.project.name,
        columns: maps.map((drawing, at) => ({
          heading: `${rounds[at]?.name ?? ''} (${t()[view]}; ${t().left}, ${t().right})`,
          drawing,
        })),
        legend: below,
        notes: [...rounds.map(titleOf), formatDate(review.nowMs)],
      });
      const bytes = form === 'SVG' ? svgFile(picture) : await pngFile(picture);
      await sendFile(`foot-map.${form.toLowerCase()}`, bytes);
    } catch {
      showToast({ text: d().trouble });
    }
  };

  return (
    <section class="stack" aria-label={words.view}>
      <div class="options no-print">
        <Choice
          hideLabel
          label={words.view}
          options={[
            { value: 'upper', label: t().upper },
            { value: 'sole', label: t().sole },
          ]}
          value={view}
          onChange={setView}
        />
        <Choice
          hideLabel
          label={words.times}
          options={[
            { value: 'twice', label: words.twiceOrMore },
            { value: 'once', label: words.once },
          ]}
          value={times}
          onChange={setTimes}
        />
        <SelectField<ComplaintKind | 'any'>
          label={words.what}
          value={kind}
          options={[
            { value: 'any', label: words.any },
            ...complaintKinds.map((value) => ({ value, label: terms().kinds[value].name })),
          ]}
          onChange={props.onKind}
        />
      </div>
      <div class="map-columns" ref={columns}>
        {rounds.map((round, at) => (
          <section class="stack" key={round.id} aria-label={round.name}>
            <p class="soft small">{titleOf(round)}</p>
            <FootMap
              view={view}
              mode="heat"
              heat={heatOfZones(
                zones?.[at] ?? { left: [], right: [] },
                zones ? round.complaints.asked.testers : 0,
                view,
                times,
                formatPercent,
              )}
              {...(open && at === 0 && { selected: new Set([zoneKey(open.foot, open.zone)]) })}
              {...(at === 0 && { onPick: props.onPick })}
              names={(zone) => terms().zones[zone].name}
              labels={{
                left: t().left,
                right: t().right,
                sole: t().sole,
                upper: t().upper,
                unasked: words.unasked,
              }}
            />
          </section>
        ))}
      </div>
      <div ref={legend}>
        <HeatLegend title={words.legend} levels={words.levels} unasked={words.unasked} />
      </div>
      <div class="row no-print">
        {(['SVG', 'PNG'] as const).map((form) => (
          <Button key={form} kind="quiet" onClick={() => void save(form)}>
            {words.savePicture(form)}
          </Button>
        ))}
      </div>
    </section>
  );
};
