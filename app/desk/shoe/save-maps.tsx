/** The maps of all rounds as one picture that leaves the page: SVG for a drawing program, PNG for a message. */
import type { RefObject } from 'preact';
import { useRef } from 'preact/hooks';
import type { RoundSummary } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { HeatLegend } from '../../parts/foot-map/heat-legend.tsx';
import { formatDate } from '../../parts/format.ts';
import { pictureOf, pngFile, svgFile } from '../../parts/picture.ts';
import { sendFile } from '../../parts/send-file.ts';
import { d, p, saidOf } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';

export const SaveMaps = (
  props: TabProps & {
    readonly rounds: readonly RoundSummary[];
    readonly drawings: RefObject<HTMLDivElement | null>;
  },
) => {
  const { review, rounds, drawings } = props;
  const words = d().complaints;
  const legend = useRef<HTMLDivElement>(null);
  const save = async (form: 'SVG' | 'PNG') => {
    const maps = [...(drawings.current?.querySelectorAll('.round-drawings') ?? [])];
    const below = legend.current?.querySelector('.foot-map');
    if (maps.length === 0 || !below) return;
    try {
      const picture = pictureOf({
        title: review.project.name,
        columns: maps.map((drawing, at) => ({ heading: rounds[at]?.name ?? '', drawing })),
        legend: below,
        notes: [
          ...rounds.map(({ name, complaints: { asked } }) =>
            saidOf(name, p().shoe.asked(asked.runs, asked.testers)),
          ),
          formatDate(review.nowMs),
        ],
      });
      const bytes = form === 'SVG' ? svgFile(picture) : await pngFile(picture);
      await sendFile(`foot-map.${form.toLowerCase()}`, bytes);
    } catch {
      showToast({ text: d().trouble });
    }
  };
  return (
    <details class="how-sure no-print">
      <summary>{p().shoe.saveMap}</summary>
      <div ref={legend}>
        <HeatLegend title={words.legend} levels={words.levels} unasked={words.unasked} />
      </div>
      <div class="row">
        {(['SVG', 'PNG'] as const).map((form) => (
          <Button key={form} kind="quiet" onClick={() => void save(form)}>
            {words.savePicture(form)}
          </Button>
        ))}
      </div>
    </details>
  );
};
