/** Which numbers do the bodies of records hold, and within which ends? Read off the schemas themselves. */
import type * as z from 'zod/mini';
import type { Range } from './bodies/field-ranges.ts';
import { bodySchemas } from './body.ts';
import { isKind } from './kinds.ts';

export interface NumberField {
  /** From the top of the value; `*` stands for every item of a list and every key of a record. */
  readonly path: readonly string[];
  /** Null: the schema names no end there. */
  readonly least: number | null;
  readonly most: number | null;
}

/** What of a schema's definition is looked at here. */
interface Definition {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.ZodMiniType>>;
  readonly element?: z.ZodMiniType;
  readonly innerType?: z.ZodMiniType;
  readonly keyType?: z.ZodMiniType;
  readonly valueType?: z.ZodMiniType;
  readonly options?: readonly z.ZodMiniType[];
  readonly items?: readonly z.ZodMiniType[];
  readonly checks?: readonly {
    readonly _zod: { readonly def: { readonly check: string; readonly value?: unknown } };
  }[];
}

const endOf = ({ checks = [] }: Definition, check: 'greater_than' | 'less_than'): number | null => {
  const found = checks.find(({ _zod }) => _zod.def.check === check)?._zod.def.value;
  return typeof found === 'number' ? found : null;
};

/** Every number of a schema, whatever it is wrapped in. */
export const numberFields = (
  schema: z.ZodMiniType,
  path: readonly string[] = [],
): readonly NumberField[] => {
  const def = schema._zod.def as unknown as Definition;
  if (def.type === 'number')
    return [{ path, least: endOf(def, 'greater_than'), most: endOf(def, 'less_than') }];
  const every = [...path, '*'];
  return [
    ...Object.entries(def.shape ?? {}).flatMap(([key, one]) => numberFields(one, [...path, key])),
    ...[def.element, def.keyType, def.valueType, ...(def.items ?? [])].flatMap((one) =>
      one ? numberFields(one, every) : [],
    ),
    ...[def.innerType, ...(def.options ?? [])].flatMap((one) =>
      one ? numberFields(one, path) : [],
    ),
  ];
};

/** In which unit the number of a field is, by the ending of its name. */
const endings: readonly (readonly [RegExp, Range['unit']])[] = [
  [/Mm$/, 'mm'],
  [/Kg$/, 'kg'],
  [/S$/, 's'],
  [/C$/, '°C'],
  [/H$/, 'h'],
  [/N$/, 'N'],
  [/M$/, 'm'],
];

/**
 * What the number at a field of a body can be.
 * @param field as {@link BodyProblem} names it
 * @returns null where no number is there
 */
export const rangeAt = (kind: string, field: string): Range | null => {
  if (!isKind(kind)) return null;
  const keys = field.split('.');
  const found = numberFields(bodySchemas[kind]).find(
    ({ path }) =>
      path.length === keys.length && path.every((key, at) => key === '*' || key === keys[at]),
  );
  if (!found || found.least === null || found.most === null) return null;
  const { least, most } = found;
  // Of `footLengthMm.left` the unit stands in the word before the last.
  for (const key of keys.toReversed())
    for (const [ending, unit] of endings) if (ending.test(key)) return { least, most, unit };
  return { least, most, unit: null };
};
