/** The answers to the question after pain in a round, beside the zones that hurt. */
import { d, terms } from '../../words/index.ts';
import { painLines } from '../../words/say-pain.ts';
import { Judged } from '../judged.tsx';
import { speakerOf } from '../speaker.ts';
import type { RoundProps } from './round-props.ts';

export const PainPart = (props: RoundProps) => {
  const { pain } = props.round;
  const [answered, ...lines] = painLines(pain, speakerOf(props));
  return (
    <section class="sheet">
      <div class="row row-apart">
        <h2>{d().pain.title}</h2>
        {pain && <Judged word={pain.word}>{terms().evidence[pain.word].name}</Judged>}
      </div>
      <p>{answered}</p>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </section>
  );
};
