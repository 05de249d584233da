/**
 * A fit trial as it stands on the phone: who, which pair, what they say standing and walking, what they want moved. Kept
 * as it is typed, and read back into the record. Pure.
 */
import * as z from 'zod/mini';
import { fitPlaces, zoneCodes, type FitPlace, type ZoneCode } from '../../core/foot/index.ts';
import { moveKey, usualMove } from '../../core/fitting/index.ts';
import {
  changeDirections,
  editBody,
  fitPains,
  fits,
  fitSpots,
  heelSlips,
  lacings,
  ranges,
  socks,
  walkWays,
  isIn,
  type Fit,
  type FitAnswer,
  type FitPain,
  type FitSpotKind,
  type FitTrial,
  type Foot,
  type HeelSlip,
  type RecordId,
  type StructuredChange,
} from '../../core/records/index.ts';

/** The row of feet: of both alike, or of one that is set apart. */
export const shoesAsked = ['both', 'left', 'right'] as const;
export type ShoeAsked = (typeof shoesAsked)[number];

export interface PlaceAnswer {
  readonly fit: Fit;
  /** Null: not said how far. */
  readonly mm: number | null;
}

type ByPlace = Readonly<Partial<Record<FitPlace, PlaceAnswer>>>;

export interface FitSpot {
  readonly foot: Foot;
  readonly zone: ZoneCode;
  readonly what: FitSpotKind;
}

export interface FitForm {
  readonly step: 'who' | 'standing' | 'walking';
  /** `me`: the member of the phone; `another`: by a code; else a tester whom a lead chose. */
  readonly who: string;
  readonly code: string;
  readonly pair: string;
  readonly lacing: (typeof lacings)[number] | null;
  readonly sock: (typeof socks)[number] | null;
  /** Which feet the rows speak of. */
  readonly foot: ShoeAsked;
  readonly standing: Readonly<Record<ShoeAsked, ByPlace>>;
  readonly walked: (typeof walkWays)[number] | null;
  readonly heel: Readonly<Partial<Record<ShoeAsked, HeelSlip>>>;
  /** Null: not answered; empty: nothing presses, rubs or gapes. */
  readonly spots: readonly FitSpot[] | null;
  /** Null: not answered; empty: neither. */
  readonly pain: readonly FitPain[] | null;
  readonly cautionRead: boolean;
  /** Of the moves that their answers suggest, those that they want, by {@link moveKey}. */
  readonly accepted: readonly string[];
  /** What they want moved besides. */
  readonly others: readonly StructuredChange[];
  readonly words: string;
}

const answer = z.object({ fit: z.enum(fits), mm: z.nullable(z.number()) });
const byPlace = z.partialRecord(z.enum(fitPlaces), answer);

/** A draft of another version is not taken up. */
export const fitFormSchema: z.ZodMiniType = z.object({
  step: z.enum(['who', 'standing', 'walking']),
  who: z.string(),
  code: z.string(),
  pair: z.string(),
  lacing: z.nullable(z.enum(lacings)),
  sock: z.nullable(z.enum(socks)),
  foot: z.enum(shoesAsked),
  standing: z.object({ both: byPlace, left: byPlace, right: byPlace }),
  walked: z.nullable(z.enum(walkWays)),
  heel: z.partialRecord(z.enum(shoesAsked), z.enum(heelSlips)),
  spots: z.nullable(
    z.array(
      z.object({
        foot: z.enum(['left', 'right']),
        zone: z.enum(zoneCodes),
        what: z.enum(fitSpots),
      }),
    ),
  ),
  pain: z.nullable(z.array(z.enum(fitPains))),
  cautionRead: z.boolean(),
  accepted: z.array(z.string()),
  others: z.array(z.looseObject({ part: z.string(), direction: z.enum(changeDirections) })),
  words: z.string(),
});

/** The form that was kept; null where there is none that this version wrote. */
export const keptFitForm = (value: unknown): FitForm | null =>
  z.safeParse(fitFormSchema, value).success ? (value as FitForm) : null;

export const newFitForm = (who: string, code: string, pair: string): FitForm => ({
  ...{ step: 'who', who, code, pair, lacing: null, sock: null, foot: 'both' },
  standing: { both: {}, left: {}, right: {} },
  ...{ walked: null, heel: {}, spots: null, pain: null, cautionRead: false },
  ...{ accepted: [], others: [], words: '' },
});

/** What the row of a place shows: of one foot what was said of both until it is set apart. */
export const shownAnswer = (
  { standing, foot }: Pick<FitForm, 'standing' | 'foot'>,
  place: FitPlace,
): PlaceAnswer | null =>
  standing[foot][place] ?? (foot === 'both' ? null : (standing.both[place] ?? null));

/** An answer to a place. Said of both feet it takes the place of what was said of one. */
export const withAnswer = (form: FitForm, place: FitPlace, said: PlaceAnswer): FitForm => {
  const { standing, foot } = form;
  const without = ({ [place]: _, ...rest }: ByPlace): ByPlace => rest;
  return {
    ...form,
    standing:
      foot === 'both'
        ? {
            both: { ...standing.both, [place]: said },
            left: without(standing.left),
            right: without(standing.right),
          }
        : { ...standing, [foot]: { ...standing[foot], [place]: said } },
  };
};

/** The other way takes no estimate along; the same way again keeps it. */
export const withFit = (form: FitForm, place: FitPlace, fit: Fit): FitForm => {
  const before = shownAnswer(form, place);
  return withAnswer(form, place, { fit, mm: before?.fit === fit ? before.mm : null });
};

/** An estimate of how far a place is off; of one that is right there is none. */
export const withMm = (form: FitForm, place: FitPlace, mm: number): FitForm => {
  const before = shownAnswer(form, place);
  if (!before || before.fit === 'right') return form;
  return withAnswer(form, place, { fit: before.fit, mm });
};

/** The places of which nothing was said, of either foot. */
export const openPlaces = ({ standing }: Pick<FitForm, 'standing'>): readonly FitPlace[] =>
  fitPlaces.filter(
    (place) => !standing.both[place] && !(standing.left[place] && standing.right[place]),
  );

/** One press says of all the places that are left: just right. */
export const restRight = (form: FitForm): FitForm =>
  openPlaces(form).reduce<FitForm>(
    (now, place) => ({
      ...now,
      standing: {
        ...now.standing,
        both: { ...now.standing.both, [place]: { fit: 'right', mm: null } },
      },
    }),
    form,
  );

export const withSpot = (form: FitForm, spot: FitSpot): FitForm => {
  const spots = form.spots ?? [];
  const is = (one: FitSpot) =>
    one.foot === spot.foot && one.zone === spot.zone && one.what === spot.what;
  return { ...form, spots: spots.some(is) ? spots.filter((one) => !is(one)) : [...spots, spot] };
};

/** Pain or numbness in the shoe calls for the caution, which is read before it is saved. */
export const fitCaution = ({ pain, cautionRead }: FitForm): 'none' | 'unread' | 'read' =>
  pain === null || pain.length === 0 ? 'none' : cautionRead ? 'read' : 'unread';

/** One of them more or less; without any the caution is forgotten, so that it is read anew where it applies anew. */
export const withPain = (form: FitForm, sign: FitPain): FitForm => {
  const before = form.pain ?? [];
  const pain = before.includes(sign) ? before.filter((one) => one !== sign) : [...before, sign];
  return { ...form, pain, cautionRead: pain.length > 0 && form.cautionRead };
};

/** What is usually moved for each place that they say is off, one foot set apart where its answer is. */
export const suggestedMoves = ({
  standing,
}: Pick<FitForm, 'standing'>): readonly StructuredChange[] =>
  shoesAsked.flatMap((shoe) =>
    fitPlaces.flatMap((place) => {
      const said = standing[shoe][place];
      // Of both feet only where neither was set apart.
      const isApart = shoe === 'both' && (standing.left[place] ?? standing.right[place]);
      if (!said || said.fit === 'right') return [];
      if (!isApart) return [usualMove(place, said.fit, said.mm, shoe === 'both' ? null : shoe)];
      return (['left', 'right'] as const)
        .filter((foot) => !standing[foot][place])
        .map((foot) => usualMove(place, said.fit as Exclude<Fit, 'right'>, said.mm, foot));
    }),
  );

/** What they want moved: what their answers suggest and they said yes to, and what they added. */
export const wantedOf = (form: FitForm): readonly StructuredChange[] => [
  ...suggestedMoves(form).filter((one) => form.accepted.includes(moveKey(one))),
  ...form.others,
];

export type FitTrouble = 'pair' | 'code' | 'code-taken' | 'nothing-said';

const CODE = /^[A-Z0-9][A-Z0-9-]{0,11}$/;

/** A code as it is kept: without spaces around it, in capitals. */
export const fitterCode = (typed: string): string => typed.trim().toUpperCase();

/** What must be known before the shoe goes on. @param taken codes of members, which a person without one must not have */
export const whoTroubles = (
  { who, code, pair }: FitForm,
  taken: ReadonlySet<string>,
): readonly FitTrouble[] => [
  ...(who === 'another'
    ? !CODE.test(fitterCode(code))
      ? (['code'] as const)
      : taken.has(fitterCode(code))
        ? (['code-taken'] as const)
        : []
    : []),
  ...(pair === '' ? (['pair'] as const) : []),
];

const answersIn = ({ standing }: FitForm): FitAnswer[] =>
  shoesAsked.flatMap((shoe) =>
    fitPlaces.flatMap((place) => {
      const said = standing[shoe][place];
      if (!said) return [];
      const { fit, mm } = said;
      return [
        {
          ...{ place, fit },
          ...(shoe !== 'both' && { foot: shoe }),
          ...(fit !== 'right' && mm !== null && isIn(mm, ranges.fitMm) && { mm }),
        },
      ];
    }),
  );

export interface FitContext {
  readonly project: RecordId;
  readonly session: RecordId;
  /** The member of this phone. */
  readonly member: RecordId;
  /** Instant at which it is saved. */
  readonly at: string;
}

export type ReadFitTrial =
  | { readonly ok: true; readonly body: FitTrial }
  | { readonly ok: false; readonly troubles: readonly FitTrouble[] };

/** The record of a form. A trial in which nothing was said is none. */
export const readFitTrial = (
  form: FitForm,
  { project, session, member, at }: FitContext,
  taken: ReadonlySet<string>,
): ReadFitTrial => {
  const troubles = whoTroubles(form, taken);
  const standing = answersIn(form);
  const heel = shoesAsked.flatMap((shoe) => {
    const slip = form.heel[shoe];
    return slip ? [{ slip, ...(shoe !== 'both' && { foot: shoe }) }] : [];
  });
  const words = form.words.trim();
  const wanted = wantedOf(form);
  const saysNothing =
    [standing, heel, wanted].every((some) => some.length === 0) &&
    form.spots === null &&
    form.pain === null &&
    words === '';
  if (troubles.length > 0 || saysNothing)
    return {
      ok: false,
      troubles: [...troubles, ...(saysNothing ? ['nothing-said' as const] : [])],
    };
  const whose =
    form.who === 'another'
      ? { fitter: fitterCode(form.code) }
      : { tester: form.who === 'me' ? member : (form.who as RecordId) };
  return {
    ok: true,
    body: editBody<'fit-trial'>(
      { project, session, pair: form.pair as RecordId, at, ...whose, standing },
      {
        lacing: form.lacing ?? undefined,
        sock: form.sock ?? undefined,
        walked: form.walked ?? undefined,
        heel: heel.length > 0 ? heel : undefined,
        spots: form.spots === null ? undefined : form.spots.map((one) => ({ ...one })),
        pain: form.pain === null ? undefined : [...form.pain],
        wanted: wanted.length > 0 ? [...wanted] : undefined,
        words: words === '' ? undefined : words,
      },
    ),
  };
};
