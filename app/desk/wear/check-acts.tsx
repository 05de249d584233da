/** What can be done with the bench checks that are selected: their readings are set aside, or count. Both can be undone. */
import { useState } from 'preact/hooks';
import type { RecordOf, Ruling } from '../../../core/records/index.ts';
import { decisionOn, type ListedCheck, type ListedReading } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { toInstant } from '../../parts/instant.ts';
import { d, p } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { ReasonForm } from '../parts/reason-form.tsx';
import { saveDecisions } from '../waiting/save-decision.ts';

interface Judged {
  readonly record: RecordOf<'bench-check'>;
  readonly reading: ListedReading;
}

export const CheckActs = (
  props: TabProps & { readonly chosen: readonly ListedCheck[]; readonly none: () => void },
) => {
  const { records, review, chosen, none } = props;
  const words = p().wear.checks;
  const [isOpen, setOpen] = useState(false);
  const byId = new Map(records['bench-check'].map((one) => [one.revision.id, one]));
  const all = chosen.flatMap(({ id, readings }): Judged[] => {
    const record = byId.get(id);
    return record ? readings.map((reading) => ({ record, reading })) : [];
  });
  const inFigures = all.filter(({ reading }) => reading.standing.state !== 'set-aside');
  const out = all.filter(({ reading }) => reading.standing.state !== 'counts');
  const decide = async (judged: readonly Judged[], ruling: Ruling, why: string, said: string) => {
    const at = toInstant(Date.now());
    const saved = await saveDecisions(
      judged.map(({ record: { revision }, reading: { measure, site, foot, unit } }) =>
        decisionOn(
          {
            record: revision.id,
            recordKind: 'bench-check',
            judged: revision.stamp,
            reading: { measure, site, foot, unit },
          },
          { project: review.project.id, ruling, why, at },
        ),
      ),
      said,
    );
    if (saved) none();
    return saved;
  };
  const checks = new Set(inFigures.map(({ record }) => record.revision.id)).size;
  if (isOpen && checks > 0)
    return (
      <div class="list-form">
        <ReasonForm
          label={words.asideSelected(checks, inFigures.length)}
          hint={words.asideHint}
          close={() => setOpen(false)}
          save={async (why) => {
            if (await decide(inFigures, 'set-aside', why, words.asideNow(inFigures.length)))
              setOpen(false);
          }}
        />
      </div>
    );
  return (
    <>
      {checks > 0 && (
        <Button onClick={() => setOpen(true)}>
          {words.asideSelected(checks, inFigures.length)}
        </Button>
      )}
      {out.length > 0 && (
        <Button
          onClick={() =>
            void decide(out, 'counted', d().waiting.checked, words.countedNow(out.length))
          }
        >
          {words.countSelected(out.length)}
        </Button>
      )}
    </>
  );
};
