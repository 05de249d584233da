/** Whether the panel answers steadily, and whom to ask what: sentences, no ranking. */
import { d, t } from '../../words/index.ts';
import { panelInWords } from '../../words/say-panel.ts';
import { useWork, type TabProps } from '../desk-state.ts';
import { speakerOf } from '../parts/speaker.ts';

const Lines = ({ of }: { readonly of: readonly string[] }) => (
  <ul>
    {of.map((line) => (
      <li key={line}>{line}</li>
    ))}
  </ul>
);

export const PanelCheckPart = (props: TabProps) => {
  const words = d().panel.check;
  const project = props.review.project.id;
  const check = useWork((desk) => desk.panelCheck(project), props.records, [project]);
  if (!check) return <p class="soft">{t().loading}</p>;
  const said = panelInWords(check, speakerOf(props));
  return (
    <section class="sheet" aria-label={words.title}>
      <h2>{words.title}</h2>
      <hr class="stitch" />
      {said ? (
        <>
          <h3>{words.ask}</h3>
          {said.noQuestion === null ? <Lines of={said.questions} /> : <p>{said.noQuestion}</p>}
          <h3>{words.agreement}</h3>
          <p>{said.agreement}</p>
          {said.correlations.length > 0 && <Lines of={said.correlations} />}
          <p>{said.error}</p>
          <p class="soft small">{words.how}</p>
        </>
      ) : (
        <p>{words.nobody}</p>
      )}
    </section>
  );
};
