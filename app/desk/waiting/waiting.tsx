/** What waits for the lead's decision, with one press each to count, correct or set aside, and what was decided. */
import type { DecidedItem, WaitingItem } from '../../../core/review/index.ts';
import { formatDate } from '../../parts/format.ts';
import { d } from '../../words/index.ts';
import { decidedInWords } from '../../words/say-waiting.ts';
import type { TabProps } from '../desk-state.ts';
import { Some } from '../parts/some.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { ReverseButton, WaitingRow } from './waiting-row.tsx';
import './waiting.css';

const keyOf = (item: WaitingItem): string =>
  item.about === 'gauge'
    ? `${item.round} ${item.measure} ${item.unit} ${item.gauge} ${item.than}`
    : JSON.stringify(item.subject);

export const Waiting = (props: TabProps) => {
  const words = d().waiting;
  const { waiting, decided } = props.review;
  const out = waiting.filter(({ counts }) => !counts);
  const meanwhile = waiting.filter(({ counts }) => counts);
  return (
    <>
      <List {...props} title={words.out} items={out} />
      <List {...props} title={words.meanwhile} items={meanwhile} />
      <DecidedList
        {...props}
        title={words.setAside}
        items={decided.filter(({ ruling }) => ruling === 'set-aside')}
      />
      <DecidedList
        {...props}
        title={words.counted}
        items={decided.filter(({ ruling }) => ruling === 'counted')}
      />
    </>
  );
};

const List = (props: TabProps & { title: string; items: readonly WaitingItem[] }) =>
  props.items.length === 0 ? null : (
    <section>
      <h2>{props.title}</h2>
      <ul class="plain-list">
        <Some of={props.items} step={20}>
          {(item) => (
            <WaitingRow
              key={keyOf(item)}
              records={props.records}
              review={props.review}
              item={item}
            />
          )}
        </Some>
      </ul>
    </section>
  );

const DecidedList = (props: TabProps & { title: string; items: readonly DecidedItem[] }) => {
  const speaker = speakerOf(props);
  if (props.items.length === 0) return null;
  return (
    <section>
      <h2>{props.title}</h2>
      <ul class="plain-list">
        <Some of={props.items} step={10}>
          {(item) => (
            <li key={JSON.stringify(item.subject)} class="row row-apart">
              <span>
                {decidedInWords(item, speaker, formatDate)}{' '}
                <span class="soft small">{formatDate(item.at)}</span>
              </span>
              <ReverseButton project={props.review.project.id} item={item} />
            </li>
          )}
        </Some>
      </ul>
    </section>
  );
};
