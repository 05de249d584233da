/** Testers as they are typed: one in a form, or a panel as a list. */
import { useState } from 'preact/hooks';
import type { RecordId, RecordOf, Tester } from '../../../core/records/index.ts';
import { millimetres } from '../../../core/units/index.ts';
import { formatSize } from '../../parts/format.ts';
import { clauses, d } from '../../words/index.ts';
import { readLines } from '../../drafts/lines.ts';
import {
  draftOfTester,
  rangesOfTester,
  readTesterDraft,
  readTesterLine,
  withCodes,
  type TesterDraft,
  type TesterTrouble,
} from '../../drafts/tester.ts';
import { typedWhole } from '../../drafts/typed.ts';
import type { TabProps } from '../desk-state.ts';
import { saveFromForm, SmallForm, TextField } from '../parts/form-parts.tsx';
import { sayRange } from '../parts/in-range.ts';
import { testerSchema } from '../../drafts/kept.ts';
import { useKept } from '../../parts/kept.tsx';
import { ListDraw, ListForm } from '../parts/list-form.tsx';
import { useMoveOn } from '../start/guide.ts';
import { testerLabel } from './tester-label.ts';

/** The codes of all testers but one. */
export const codesBut = (
  records: TabProps['records'],
  tester: RecordId | null,
): ReadonlySet<string> =>
  new Set(
    records.tester.flatMap(({ body, revision }) => (revision.id === tester ? [] : [body.code])),
  );

export const TesterFields = ({
  of,
  taken,
  close,
}: {
  readonly of?: RecordOf<'tester'>;
  readonly taken: ReadonlySet<string>;
  readonly close: () => void;
}) => {
  const words = d().testers;
  const kept = useKept<TesterDraft>({
    key: of ? `tester ${of.revision.id}` : 'new tester',
    of: of?.revision.stamp,
    schema: testerSchema,
    begin: () => draftOfTester(of?.body ?? null),
  });
  const { draft, setDraft } = kept;
  /** Saving was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const read = readTesterDraft(draft, of?.body ?? null, taken);
  const troubles = tried && !read.ok ? read.troubles : [];
  const whys = {
    missing: d().missing,
    'not-a-code': d().notACode,
    taken: words.taken,
    'wrong-number': d().wrongNumber,
    'wrong-length': words.wrongLength,
  };
  const troubleOf = ({ why, field }: TesterTrouble): string => {
    const range = why === 'wrong-number' ? rangesOfTester[field] : undefined;
    return range ? sayRange(range) : whys[why];
  };
  const fieldProps = (field: keyof TesterDraft) => {
    const trouble = troubles.find((one) => one.field === field);
    return {
      value: draft[field],
      onInput: (value: string) => setDraft((now) => ({ ...now, [field]: value })),
      error: trouble && troubleOf(trouble),
    };
  };
  const save = async () => {
    setTried(true);
    if (!read.ok) return '';
    const saved = await saveFromForm('tester', read.body, of?.revision.id);
    if (typeof saved === 'string') return saved;
    await kept.done();
    close();
    return null;
  };
  return (
    <SmallForm save={save} kept={kept}>
      <div class="field-row">
        <TextField label={words.code} hint={words.codeHint} {...fieldProps('code')} />
        <TextField label={words.name} {...fieldProps('name')} optional={words.nameStays} />
        <TextField label={words.length} {...fieldProps('length')} optional />
        <TextField label={d().blueprint.widthField} {...fieldProps('width')} optional />
        <TextField label={d().blueprint.girthField} {...fieldProps('girth')} optional />
        <TextField label={words.mass} {...fieldProps('mass')} numeric optional />
        <TextField label={words.height} {...fieldProps('height')} numeric optional />
      </div>
    </SmallForm>
  );
};

/** What a line makes: code, name and foot, and the size that the foot asks for. */
const testerWithSize = (tester: Tester): string => {
  const { footLengthMm: foot } = tester;
  const size = foot && formatSize(millimetres(Math.max(foot.left, foot.right)));
  return clauses(testerLabel(tester), size ?? d().testers.noLength);
};

/** A panel of more comes in as a table. */
const MOST_AT_ONCE = 200;

export const TestersForm = (props: {
  readonly taken: ReadonlySet<string>;
  readonly close: () => void;
}) => {
  const words = d().testers;
  const [text, setText] = useState('');
  const [count, setCount] = useState('');
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const moveOn = useMoveOn('testers');
  const give = () => {
    const many = count.trim() === '' ? 0 : typedWhole(count, 1, MOST_AT_ONCE);
    setWrong(many === null ? sayRange({ least: 1, most: MOST_AT_ONCE, unit: null }) : undefined);
    if (many !== null) setText(withCodes(text, many, props.taken));
  };
  return (
    <ListForm
      label={words.list}
      hint={words.listHint}
      text={text}
      onText={setText}
      rows={readLines(withCodes(text, 0, props.taken), (line) => readTesterLine(line, props.taken))}
      count={words.testers}
      says={testerWithSize}
      whys={{
        'not-a-code': d().notACode,
        taken: words.taken,
        'wrong-length': words.wrongLength,
        'too-many-cells': words.tooManyCells,
      }}
      save={async (body) => {
        const saved = await saveFromForm('tester', body);
        return typeof saved === 'string' ? saved : null;
      }}
      close={() => {
        if (!moveOn()) props.close();
      }}
      after={
        <ListDraw label={words.giveCodes} act={give}>
          <TextField
            label={words.howMany}
            hint={words.giveCodesHint}
            value={count}
            onInput={(value) => {
              setCount(value);
              setWrong(undefined);
            }}
            error={wrong}
            numeric
            required={false}
          />
        </ListDraw>
      }
    />
  );
};
