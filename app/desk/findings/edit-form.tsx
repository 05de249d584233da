/** A finding is edited; what no form asks for stays in it. */
import { carriersOf, draftOfFinding } from '../../drafts/finding.ts';
import { formatNumber } from '../../parts/format.ts';
import { SmallForm } from '../parts/form-parts.tsx';
import { FindingFields } from './finding-form.tsx';
import type { FindingProps } from './finding-props.ts';
import { useFinding } from './use-finding.ts';

/** @param props.close what to do once it is saved */
export const EditForm = (props: FindingProps & { readonly close: () => void }) => {
  const { review, finding, close } = props;
  const { body, revision } = finding;
  const { save, kept, ...form } = useFinding({
    key: `finding ${revision.id}`,
    of: revision.stamp,
    begin: () => draftOfFinding(body, (value) => formatNumber(value, 3)),
  });
  return (
    <SmallForm
      kept={kept}
      save={async () => {
        const saved = await save(body, revision.id);
        if (typeof saved === 'string') return saved;
        close();
        return null;
      }}
    >
      <FindingFields
        {...form}
        carriers={carriersOf(review.rounds, body.round, body.carriedBy)}
        photos
      />
    </SmallForm>
  );
};
