/**
 * Random logs that every schema takes: one project with whatever records, from the schemas themselves, with the ends
 * of every range, ties, the same instants, and everything missing. The same seed gives the same log.
 */
import type * as z from 'zod/mini';
import {
  bodySchemas,
  kinds,
  readBody,
  sealRevision,
  structuredChangeSchema,
  type Kind,
  type RecordId,
  type Revision,
} from '../core/records/index.ts';
import { idOf, stampAt } from './core/records/make.ts';
import { seeded } from './seeded.ts';

type Random = () => number;

interface Definition {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.ZodMiniType>>;
  readonly element?: z.ZodMiniType;
  readonly innerType?: z.ZodMiniType;
  readonly keyType?: z.ZodMiniType;
  readonly valueType?: z.ZodMiniType;
  readonly options?: readonly z.ZodMiniType[];
  readonly items?: readonly z.ZodMiniType[];
  readonly entries?: Readonly<Record<string, string>>;
  readonly values?: readonly unknown[];
  readonly format?: string;
  readonly checks?: readonly { readonly _zod: { readonly def: Check } }[];
}
interface Check {
  readonly check: string;
  readonly value?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly format?: string;
}

/** What a log is like as a whole: without this every log would be the same soup. */
interface Mood {
  readonly random: Random;
  /** How often a field that may be absent is there. */
  readonly present: number;
  /** How often a number is an end of its range, 0 or tiny. */
  readonly extreme: number;
  /** How often a number or an instant is one that was there before. */
  readonly tie: number;
  /** Ids by kind of record, so that records name each other. */
  readonly ids: Readonly<Partial<Record<string, readonly RecordId[]>>>;
  readonly places: readonly {
    readonly measure: string;
    readonly unit: string;
    readonly site: string;
  }[];
  readonly attributes: readonly string[];
  readonly before: Map<string, unknown>;
  /** For fields that came later: drawn from numbers of their own, so that the log of every kept seed stays as it was. */
  readonly later: Pick<Mood, 'random' | 'before'>;
  /** What is being drawn. */
  readonly kind: Kind;
}

const pick = <T>(random: Random, list: readonly T[]): T =>
  list[Math.floor(random() * list.length)] as T;
const between = (random: Random, least: number, most: number): number =>
  least + Math.floor(random() * (most - least + 1));

const DAY_MS = 86_400_000;
const START_MS = Date.UTC(2026, 2, 1);

/** Where figures usually lie, by the name of their field; others lie anywhere in their range. */
const usual: Readonly<Record<string, readonly [number, number]>> = {
  distanceM: [3000, 25_000],
  otherDistanceM: [3000, 25_000],
  fromM: [0, 9000],
  carriedInM: [0, 50_000],
  durationS: [1200, 9000],
  movingS: [1200, 9000],
  value: [5, 60],
  nominal: [10, 60],
  lower: [-3, 0],
  upper: [0, 3],
  leftRight: [0, 2],
  uncertainty: [0, 1],
  sizeMm: [250, 275],
  order: [1, 4],
  count: [0, 5],
  stepsPerShoe: [2000, 9000],
  climbM: [0, 300],
  amount: [0.5, 6],
};

const numberOf = (def: Definition, name: string, mood: Mood): number => {
  const { random } = mood;
  const isWhole = def.format === 'safeint';
  const end = (check: string) =>
    def.checks?.find(({ _zod }) => _zod.def.check === check)?._zod.def.value as number;
  const [least, most] = [end('greater_than'), end('less_than')];
  const within = (value: number) =>
    Math.min(most, Math.max(least, isWhole ? Math.round(value) : value));
  const draw = random();
  if (draw < mood.extreme)
    return within(
      pick(random, [least, most, 0, 5e-324, 1e-300, 1e-9, -1e-9, 1, least + 1e-9, most - 1e-9]),
    );
  const known = mood.before.get(name);
  if (draw < mood.extreme + mood.tie && typeof known === 'number') return within(known);
  const [low, high] = usual[name] ?? [Math.max(least, -100), Math.min(most, 1000)];
  const value = within(low + random() * (high - low));
  mood.before.set(name, value);
  return value;
};

const instantOf = (mood: Mood): string => {
  const { random } = mood;
  const known = mood.before.get('instant');
  if (typeof known === 'string' && random() < mood.tie) return known;
  if (random() < mood.extreme / 4)
    return pick(random, ['0000-01-01T00:00:00Z', '9999-12-31T23:59:59Z', '1970-01-01T00:00:00Z']);
  const at = new Date(START_MS + Math.floor(random() * 90 * DAY_MS)).toISOString();
  mood.before.set('instant', at);
  return at;
};

/** Records that a field of this name names. */
const kindNamed: Readonly<Record<string, Kind>> = {
  project: 'project',
  pair: 'pair',
  pairs: 'pair',
  tester: 'tester',
  round: 'round',
  rounds: 'round',
  by: 'tester',
  carriedBy: 'round',
  stopUse: 'stop-use',
  about: 'run',
  record: 'run',
  source: 'run',
  finding: 'finding',
  order: 'pair',
  question: 'question',
  proposal: 'proposal',
  session: 'fit-session',
  fitSession: 'fit-session',
  damage: 'damage-report',
  id: 'run',
};

/** Fields that came later, whatever record they are of, and of one kind. */
const cameLater = ['archived', 'correctedBy', 'broughtIn', 'asked', 'fitSession'];
const cameLaterIn: Readonly<Partial<Record<Kind, readonly string[]>>> = {
  round: ['finding', 'proposal'],
};

/** Far from every seed that is counted up to. */
const LATER = 1_000_000_007;

const sha256 = 'a'.repeat(64);

const textOf = (def: Definition, name: string, mood: Mood): string => {
  const { random } = mood;
  const checks = def.checks?.map(({ _zod }) => _zod.def) ?? [];
  const named = kindNamed[name];
  const own = named && mood.ids[named];
  if (named) return own && own.length > 0 && random() < 0.97 ? pick(random, own) : idOf(240);
  if (
    checks.some(({ format }) => format === 'datetime') ||
    /At$|^(at|from|until|over|archived|sent|due|asked|withdrawn|closed)$/.test(name)
  )
    return instantOf(mood);
  switch (name) {
    case 'sha256':
    case 'photos':
    case 'attachment':
      return sha256;
    case 'site':
      return pick(random, mood.places).site;
    case 'code':
    case 'fitter':
      return `X${between(random, 1, 99)}`;
    case 'language':
      return 'en';
    case 'mediaType':
      return 'image/webp';
    case 'judged':
      return stampAt(1);
    case 'part':
    case 'operator':
    case 'gauge':
      return pick(random, ['A', 'B', 'C']);
    default:
      return pick(random, ['x', 'word', '=1+1', '鞋', '<b>']);
  }
};

const isOptional = (schema: z.ZodMiniType): boolean =>
  (schema._zod.def as unknown as Definition).type === 'optional';

/** A value that the schema takes, but for what a refinement asks. */
const valueOf = (schema: z.ZodMiniType, name: string, mood: Mood): unknown => {
  const def = schema._zod.def as unknown as Definition;
  const { random } = mood;
  switch (def.type) {
    case 'optional':
    case 'nullable':
      if (
        cameLater.includes(name) ||
        cameLaterIn[mood.kind]?.includes(name) ||
        def.innerType === structuredChangeSchema
      ) {
        const { later } = mood;
        return later.random() < 0.2
          ? valueOf(def.innerType as z.ZodMiniType, name, { ...mood, ...later })
          : undefined;
      }
      return random() < mood.present
        ? valueOf(def.innerType as z.ZodMiniType, name, mood)
        : def.type === 'nullable'
          ? null
          : undefined;
    case 'number':
      return numberOf(def, name, mood);
    case 'string':
      return textOf(def, name, mood);
    case 'boolean':
      return random() < 0.5;
    case 'enum':
      return pick(random, Object.values(def.entries ?? {}));
    case 'literal':
      return pick(random, def.values ?? []);
    case 'union':
      return valueOf(pick(random, def.options ?? []), name, mood);
    case 'tuple':
      return (def.items ?? []).map((one) => valueOf(one, name, mood));
    case 'array': {
      const bound = (check: string) =>
        def.checks?.find(({ _zod }) => _zod.def.check === check)?._zod.def;
      const least = bound('min_length')?.minimum ?? 0;
      const greatest = bound('max_length')?.maximum ?? Infinity;
      const many = Math.min(greatest, least + Math.floor(random() * random() * 7));
      return Array.from({ length: many }, () => valueOf(def.element as z.ZodMiniType, name, mood));
    }
    case 'record': {
      const keys = Object.values((def.keyType?._zod.def as unknown as Definition).entries ?? {});
      const entries = keys
        .filter((key) => random() < (mood.attributes.includes(key) ? 0.8 : 0.1))
        .map((key) => [key, valueOf(def.valueType as z.ZodMiniType, key, mood)] as const);
      return Object.fromEntries(entries);
    }
    case 'object': {
      const made: Record<string, unknown> = {};
      for (const [key, one] of Object.entries(def.shape ?? {})) {
        const value = valueOf(one, key, mood);
        if (value !== undefined || !isOptional(one)) made[key] = value;
      }
      return atPlace(made, mood);
    }
    default:
      return null;
  }
};

/** Readings, limits and dimensions are of a few places, or no two of them would meet. */
const atPlace = (made: Record<string, unknown>, mood: Mood): Record<string, unknown> => {
  if (!('measure' in made) || mood.random() < 0.05) return made;
  const place = pick(mood.random, mood.places);
  return {
    ...made,
    measure: place.measure,
    ...('site' in made && { site: place.site }),
    ...('unit' in made && { unit: place.unit }),
  };
};

/** Shares that sum to 1. */
const withShares = (body: Record<string, unknown>, { random }: Mood): Record<string, unknown> => {
  if (!body['surfaces'] || Array.isArray(body['surfaces'])) return body;
  const surfaces = pick(random, [
    { road: 1 },
    { road: 0.5, trail: 0.5 },
    { sand: 1 },
    { road: 1, snow: 0 },
  ]);
  return { ...body, surfaces };
};

const places = [
  { measure: 'stack-height', unit: 'mm', site: 'heel-centre' },
  { measure: 'hardness', unit: 'asker-c', site: 'heel-centre' },
  { measure: 'energy-absorbed', unit: 'J', site: 'heel-centre' },
  { measure: 'energy-absorbed', unit: '%', site: 'forefoot-centre' },
  { measure: 'dimension', unit: 'mm', site: 'internal-length' },
  { measure: 'impact-peak', unit: 'N', site: 'heel-centre' },
  { measure: 'tread-depth', unit: 'mm', site: 'forefoot-centre' },
  { measure: 'mass', unit: 'g', site: 'shoe' },
] as const;

/** How many records of a kind a log has at most. */
const most: Readonly<Record<Kind, number>> = {
  project: 1,
  round: 4,
  pair: 8,
  tester: 6,
  'hand-out': 12,
  run: 70,
  ranking: 5,
  'damage-report': 2,
  'bench-check': 14,
  'gauge-study': 2,
  'hand-out-plan': 1,
  finding: 3,
  report: 1,
  'stop-use': 2,
  acknowledgement: 1,
  reply: 1,
  decision: 3,
  quote: 2,
  question: 6,
  answer: 6,
  proposal: 4,
  'proposal-reply': 4,
  thanks: 3,
  'fit-session': 2,
  'fit-trial': 8,
  attachment: 1,
};

/** Kinds that came later: the rest of a seed's log stays as it was. */
const drawnLast: readonly Kind[] = [
  'quote',
  'question',
  'answer',
  'proposal',
  'proposal-reply',
  'thanks',
  'fit-session',
  'fit-trial',
];

export interface RandomLog {
  readonly project: RecordId;
  readonly nowMs: number;
  readonly heads: readonly Revision[];
}

/** A log; the one of the same seed is the same. */
export const randomLog = (seed: number): RandomLog => {
  const random = seeded(seed);
  let last = 0;
  const some = (kind: Kind) =>
    Array.from({ length: kind === 'project' ? 1 : Math.floor(random() * (most[kind] + 1)) }, () =>
      idOf(++last),
    );
  const first = kinds.filter((kind) => !drawnLast.includes(kind));
  const ids = Object.fromEntries(first.map((kind) => [kind, some(kind)])) as Partial<
    Record<Kind, RecordId[]>
  >;
  const mood: Mood = {
    kind: 'project',
    random,
    ids,
    present: pick(random, [0, 0.3, 0.7, 0.95]),
    extreme: pick(random, [0, 0, 0.05, 0.2, 0.6]),
    tie: pick(random, [0, 0.1, 0.5, 0.95]),
    places: Array.from({ length: between(random, 1, 3) }, () => pick(random, places)),
    attributes: random() < 0.5 ? ['overall'] : ['overall', 'heel-cushioning', 'toe-room', 'road'],
    before: new Map(),
    later: { random: seeded(seed + LATER), before: new Map() },
  };
  const heads = [...first, ...drawnLast].flatMap((kind) =>
    (ids[kind] ??= some(kind)).map((id) => {
      const drawn = valueOf(bodySchemas[kind], '', { ...mood, kind }) as Record<string, unknown>;
      const body = kind === 'run' ? withShares(drawn, mood) : drawn;
      const read = readBody(kind, body);
      if (!read.ok) throw new Error(`${kind}: ${JSON.stringify(read.problems)}`);
      const author = random() < 0.5 ? idOf(250) : ((body['tester'] as RecordId) ?? idOf(250));
      return sealRevision(
        { id, kind, author, sv: 1, body: body },
        stampAt(START_MS + Math.floor(random() * 120 * DAY_MS)),
        null,
      );
    }),
  );
  return { project: ids.project?.[0] as RecordId, nowMs: START_MS + 100 * DAY_MS, heads };
};
