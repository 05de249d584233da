/** The fields of a structured change: what moves, which way, by how much, on which side of which shoe. */
import type { ComponentChildren } from 'preact';
import { partIds, patternLines, type PartId } from '../../core/foot/index.ts';
import {
  shoeSides,
  type ChangeDirection,
  type ChangeUnit,
  type Foot,
} from '../../core/records/index.ts';
import { practiceDimensions } from '../../core/rounds/index.ts';
import {
  changeUnitsOf,
  directionsOf,
  movedOf,
  whatCanMove,
  withMoved,
  type ChangeFormDraft,
  type ChangeTrouble,
} from '../drafts/change.ts';
import { d, proposeWords, t, talkWords, terms } from '../words/index.ts';
import { placeName } from '../words/say-place.ts';
import { rangeInWords } from '../words/say-range.ts';
import { Field } from './controls/controls.tsx';
import { formatNumber } from './format.ts';

const Pick = (props: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly error?: string | undefined;
  readonly children: ComponentChildren;
}) => (
  <Field label={props.label} error={props.error}>
    {(ids) => (
      <select
        class="input"
        {...ids}
        value={props.value}
        onChange={(event) => props.onChange(event.currentTarget.value)}
      >
        {props.children}
      </select>
    )}
  </Field>
);

/** A unit as it is chosen. */
const unitName = (unit: ChangeUnit): string =>
  unit === 'deg' || unit === 'grade' ? talkWords().otherUnits[unit] : terms().units[unit];

const upper = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** What moves: the whole part, a line of the pattern, or a dimension; one that only this change names as well. */
const What = ({ draft, set }: FieldsProps) => {
  const words = proposeWords();
  const named = { desk: d(), glossary: terms() };
  const { dimension } = movedOf(draft.what);
  const isOther = dimension !== undefined && !whatCanMove.includes(draft.what);
  return (
    <Pick label={words.what} value={draft.what} onChange={(what) => set(withMoved(draft, what))}>
      <option value="">{words.wholePart}</option>
      <optgroup label={words.lines}>
        {patternLines.map((line) => (
          <option key={line} value={`line ${line}`}>
            {upper(talkWords().lines[line])}
          </option>
        ))}
      </optgroup>
      <optgroup label={words.dimensions}>
        {practiceDimensions.map((one) => (
          <option key={`${one.measure} ${one.site}`} value={`${one.measure} ${one.site}`}>
            {placeName(one, named)}
          </option>
        ))}
        {isOther && <option value={draft.what}>{placeName(dimension, named)}</option>}
      </optgroup>
    </Pick>
  );
};

interface FieldsProps {
  readonly draft: ChangeFormDraft;
  readonly set: (draft: ChangeFormDraft) => void;
}

export const ChangeFields = (
  props: FieldsProps & {
    readonly troubles: readonly { readonly field: string }[];
    /** The part is asked elsewhere in the form. */
    readonly noPart?: boolean;
  },
) => {
  const { draft, set, troubles } = props;
  const words = proposeWords();
  const talk = talkWords();
  const wrong = (field: ChangeTrouble['field']) =>
    troubles.find((one): one is ChangeTrouble => one.field === field);
  const amount = wrong('amount');
  return (
    <div class="change-fields">
      {!props.noPart && (
        <Pick
          label={words.part}
          value={draft.part}
          onChange={(part) => set({ ...draft, part: part as PartId })}
        >
          {partIds.map((part) => (
            <option key={part} value={part}>
              {terms().parts[part].name}
            </option>
          ))}
        </Pick>
      )}
      <What {...props} />
      <Pick
        label={words.direction}
        value={draft.direction}
        onChange={(direction) => set({ ...draft, direction: direction as ChangeDirection | '' })}
        error={wrong('direction') && words.errors.direction}
      >
        <option value="">{d().none}</option>
        {directionsOf(draft.what).map((one) => (
          <option key={one} value={one}>
            {talk.moves[one]}
          </option>
        ))}
      </Pick>
      <div class="change-amount">
        <Field
          label={words.amount}
          error={
            amount?.field === 'amount'
              ? rangeInWords(amount.range, {
                  desk: d(),
                  glossary: terms(),
                  number: formatNumber,
                })
              : undefined
          }
        >
          {(ids) => (
            <input
              class="input"
              inputMode="decimal"
              autocomplete="off"
              maxLength={12}
              {...ids}
              value={draft.amount}
              onInput={(event) => set({ ...draft, amount: event.currentTarget.value })}
            />
          )}
        </Field>
        <Pick
          label={words.unit}
          value={draft.unit}
          onChange={(unit) => set({ ...draft, unit: unit as ChangeUnit })}
        >
          {changeUnitsOf(draft.what).map((unit) => (
            <option key={unit} value={unit}>
              {unitName(unit)}
            </option>
          ))}
        </Pick>
      </div>
      <Pick
        label={words.side}
        value={draft.side}
        onChange={(side) => set({ ...draft, side: side as ChangeFormDraft['side'] })}
      >
        <option value="">{words.bothSides}</option>
        {shoeSides.map((side) => (
          <option key={side} value={side}>
            {talk.sides[side]}
          </option>
        ))}
      </Pick>
      <Pick
        label={words.foot}
        value={draft.foot}
        onChange={(foot) => set({ ...draft, foot: foot as Foot | 'both' })}
      >
        <option value="both">{words.bothShoes}</option>
        {(['left', 'right'] as const).map((foot) => (
          <option key={foot} value={foot}>
            {t().foot[foot]}
          </option>
        ))}
      </Pick>
    </div>
  );
};
