/** The brief of a project as it stands in its form: everything as typed, read back into a record, or what is wrong. */
import { comfortAttributeIds } from '../../core/foot/index.ts';
import {
  editBody,
  isIn,
  isSite,
  rangeOf,
  ranges,
  surfaces,
  type Brief,
  type Limit,
  type Measure,
  type Project,
  type Range,
  type Surface,
} from '../../core/records/index.ts';
import { fromMetres, millimetres, parseDecimal, toMetres } from '../../core/units/index.ts';

/** Comfort questions that came after `attributes`: in there, an older app could not read the project. */
const laterAttributes = ['ball-width'] as const;

/** Every question of comfort that a lead may ask; those that an older app does not know stand apart in the record. */
export const comfortQuestions = [...comfortAttributeIds, ...laterAttributes] as const;
export type ComfortQuestion = (typeof comfortQuestions)[number];

/** Asked unless the lead takes them out: the items of published comfort tools. */
const usual: readonly ComfortQuestion[] = [
  'heel-cushioning',
  'forefoot-cushioning',
  'stability',
  'flexibility',
  'toe-room',
  'heel-hold',
];

export interface LimitDraft {
  readonly measure: Measure;
  /** Empty: every site. */
  readonly site: string;
  /** The site is none of those to choose from and is typed, so it must not stay empty. */
  readonly isTyped?: boolean | undefined;
  readonly bound: Limit['bound'];
  readonly basis: Limit['basis'];
  /** As typed: percent where the basis is the value when new. */
  readonly value: string;
  /** What it was before it was changed, with any field of a newer app. */
  readonly old?: Limit;
}

export const emptyLimit: LimitDraft = {
  measure: 'energy-absorbed',
  site: 'heel-centre',
  bound: 'at-least',
  basis: 'share-of-new',
  value: '',
};

/** From and to of the feet that the shoe is for, as typed. */
export const feetFields = ['lengthFrom', 'lengthTo', 'widthFrom', 'widthTo'] as const;
export type FeetDraft = Readonly<Record<(typeof feetFields)[number], string>>;

export interface ProjectDraft {
  readonly name: string;
  readonly runner: Brief['runner'];
  readonly use: Brief['use'];
  readonly on: ReadonlySet<Surface>;
  /** In kilometres. */
  readonly distance: string;
  /** Of the asked runs, in percent. */
  readonly allowed: string;
  readonly allowedPain: string;
  readonly feet: FeetDraft;
  readonly limits: readonly LimitDraft[];
  readonly asked: ReadonlySet<ComfortQuestion>;
  /** What testers read on their phones. */
  readonly forTesters: string;
  /** The desk offers to tell them what came of their reports. */
  readonly tellTesters: boolean;
}

/** Tens of thousandths do not come back from percent as binary fractions do. */
const tidy = (value: number): number => Number(value.toPrecision(12));

/** A limit may lie above what a new pair has: stiffness grows. Judgement, no source. */
export const sharesOfNew: Range = { least: 0, most: 1000, unit: '%' };

/** A limit of the brief as it stands in the form. */
export const draftOfLimit = (old: Limit): LimitDraft => {
  const { measure, site, bound, basis, value } = old;
  const shown = String(basis === 'share-of-new' ? tidy(100 * value) : value);
  return { old, measure, site: site ?? '', bound, basis, value: shown };
};

const draftOfFeet = (feet: Brief['feet']): FeetDraft => {
  const [lengthFrom = '', lengthTo = ''] = feet?.lengthMm?.map(String) ?? [];
  const [widthFrom = '', widthTo = ''] = feet?.widthMm?.map(String) ?? [];
  return { lengthFrom, lengthTo, widthFrom, widthTo };
};

/** The draft of a project, or of a new one. */
export const draftOfProject = (project: Project | null): ProjectDraft => {
  const brief = project?.brief;
  return {
    name: project?.name ?? '',
    runner: brief?.runner ?? 'neutral',
    use: brief?.use ?? 'daily-training',
    on: new Set<Surface>(brief?.surfaces ?? ['road']),
    distance: brief ? String(tidy(fromMetres(brief.distanceM, 'km'))) : '',
    allowed: String(tidy(100 * (brief?.allowedRate.complaint ?? 0.05))),
    allowedPain: String(tidy(100 * (brief?.allowedRate.pain ?? 0.01))),
    feet: draftOfFeet(brief?.feet),
    limits: brief?.limits.map(draftOfLimit) ?? [],
    asked: new Set(brief ? [...brief.attributes, ...(brief.alsoAsked ?? [])] : usual),
    forTesters: brief?.forTesters ?? '',
    tellTesters: brief?.tellTesters !== false,
  };
};

/** What is wrong. `range` absent: it is missing. */
export type ProjectTrouble =
  | { readonly field: 'name' | 'surfaces' }
  | { readonly field: 'distance' | 'allowed' | 'allowedPain'; readonly typed: number | null }
  | { readonly field: 'lengthMm' | 'widthMm' }
  | {
      readonly field: 'site';
      /** The limit it is of, from 0. */
      readonly at: number;
    }
  | {
      readonly field: 'limit';
      /** From 0. */
      readonly at: number;
      readonly typed: number | null;
      readonly range: Range;
    };

export type ReadProject =
  | { readonly ok: true; readonly body: Project }
  | { readonly ok: false; readonly troubles: readonly ProjectTrouble[] };

/** Undefined: not said; null: no range. */
const readFromTo = (from: string, to: string, range: Range) => {
  if (from.trim() === '' && to.trim() === '') return undefined;
  const [least, most] = [parseDecimal(from), parseDecimal(to)];
  if (least === null || most === null || most <= least) return null;
  if (!isIn(least, range) || !isIn(most, range)) return null;
  type Mm = ReturnType<typeof millimetres>;
  return [millimetres(least), millimetres(most)] as [Mm, Mm];
};

const readLimit = (
  draft: LimitDraft,
  at: number,
): { readonly limit: Limit } | { readonly troubles: readonly ProjectTrouble[] } => {
  const { measure, bound, basis, old } = draft;
  const site = draft.site.trim();
  const typed = parseDecimal(draft.value);
  const range = basis === 'share-of-new' ? sharesOfNew : rangeOf(measure);
  const value = typed !== null && typed <= 0 ? null : typed;
  const hasSite = site === '' ? draft.isTyped !== true : isSite(site);
  const noSite = hasSite ? [] : [{ field: 'site', at } as const];
  if (value === null || !isIn(value, range))
    return { troubles: [...noSite, { field: 'limit', at, typed: value, range }] };
  if (!hasSite) return { troubles: noSite };
  const { site: _site, ...kept } = old ?? {};
  return {
    limit: {
      ...kept,
      measure,
      bound,
      basis,
      value: basis === 'share-of-new' ? tidy(value / 100) : value,
      ...(site !== '' && { site }),
    },
  };
};

/** Kilometres and percents as their fields can hold them. */
const outside = (typed: number | null, range: Range, scale: number): boolean =>
  typed === null || !isIn(typed / scale, range);

/** Everything that is wrong with the figures of the brief. */
const figureTroubles = (draft: ProjectDraft): readonly ProjectTrouble[] => {
  const wrong: ProjectTrouble[] = [];
  const number = (field: 'distance' | 'allowed' | 'allowedPain', range: Range, scale: number) => {
    const typed = parseDecimal(draft[field]);
    if (outside(typed, range, scale)) wrong.push({ field, typed });
  };
  number('distance', ranges.briefDistanceM, 1 / 1000);
  if (draft.on.size === 0) wrong.push({ field: 'surfaces' });
  number('allowed', ranges.share, 100);
  number('allowedPain', ranges.share, 100);
  const { lengthMm, widthMm } = readFeet(draft.feet);
  if (lengthMm === null) wrong.push({ field: 'lengthMm' });
  if (widthMm === null) wrong.push({ field: 'widthMm' });
  return wrong;
};

const readFeet = ({ lengthFrom, lengthTo, widthFrom, widthTo }: FeetDraft) => ({
  lengthMm: readFromTo(lengthFrom, lengthTo, ranges.footLengthMm),
  widthMm: readFromTo(widthFrom, widthTo, ranges.footWidthMm),
});

/** A number of a field that was found to hold one. */
const numberIn = (text: string): number => parseDecimal(text) ?? 0;

/**
 * Reads a draft, or says everything that is wrong with it.
 * @param old the project as it was: what no form asks for stays in it, in its brief and in each limit
 */
export const readProject = (draft: ProjectDraft, old: Project | null): ReadProject => {
  const name = draft.name.trim();
  const limits = draft.limits.map(readLimit);
  const troubles: readonly ProjectTrouble[] = [
    ...(name === '' ? [{ field: 'name' } as const] : []),
    ...figureTroubles(draft),
    ...limits.flatMap((one) => ('troubles' in one ? one.troubles : [])),
  ];
  if (troubles.length > 0) return { ok: false, troubles };
  const { lengthMm, widthMm } = readFeet(draft.feet);
  const {
    feet: oldFeet,
    alsoAsked: _alsoAsked,
    forTesters: _words,
    tellTesters: told,
    ...kept
  } = old?.brief ?? {};
  const alsoAsked = laterAttributes.filter((one) => draft.asked.has(one));
  const forTesters = draft.forTesters.trim();
  const { lengthMm: _length, widthMm: _width, ...otherFeet } = oldFeet ?? {};
  const isForFeet = (oldFeet ?? lengthMm ?? widthMm) !== undefined;
  const brief: Brief = {
    ...kept,
    runner: draft.runner,
    use: draft.use,
    surfaces: surfaces.filter((surface) => draft.on.has(surface)),
    distanceM: toMetres(numberIn(draft.distance), 'km'),
    allowedRate: {
      ...old?.brief.allowedRate,
      complaint: tidy(numberIn(draft.allowed) / 100),
      pain: tidy(numberIn(draft.allowedPain) / 100),
    },
    limits: limits.flatMap((one) => ('limit' in one ? [one.limit] : [])),
    attributes: [
      'overall',
      ...comfortAttributeIds.filter((one) => one !== 'overall' && draft.asked.has(one)),
    ],
    ...(alsoAsked.length > 0 && { alsoAsked }),
    ...(forTesters !== '' && { forTesters }),
    // As it was where it says the same: absent means that they are told.
    ...(draft.tellTesters ? told === true && { tellTesters: true } : { tellTesters: false }),
    ...(isForFeet && {
      feet: { ...otherFeet, ...(lengthMm && { lengthMm }), ...(widthMm && { widthMm }) },
    }),
  };
  return { ok: true, body: editBody<'project'>(old ?? { name, brief }, { name, brief }) };
};

/** The project put away, or brought back. @param at the instant; null: it is open again */
export const archived = (project: Project, at: string | null): Project =>
  editBody<'project'>(project, { archived: at ?? undefined });

/**
 * A project to begin a new one from: its brief with all limits, and what a newer app wrote, but not its name and not
 * that it was put away.
 */
export const projectLike = (project: Project): Project =>
  editBody<'project'>(project, { name: '', archived: undefined });
