/**
 * What a language holds. The type of each part is that of its English words; the glossary alone is typed by the ids of
 * the core, so that a new zone or kind does not compile before every language names it.
 */
import type {
  ComfortAttributeId,
  ComplaintKind,
  FitPlace,
  FoamId,
  PartId,
  RollUpId,
  Trade,
  TwoSidedId,
  ZoneCode,
} from '../../core/foot/index.ts';
import type {
  AssociationFactor,
  ComfortChange,
  EvidenceWord,
  Sureness,
  Trend,
} from '../../core/complaints/index.ts';
import type {
  Brief,
  ChangeVerdict,
  DamageReport,
  FitPain,
  FitSpotKind,
  FitTrial,
  HeelSlip,
  Measure,
  MeasureUnit,
  PainSign,
  Role,
  Round,
  Run,
  Surface,
} from '../../core/records/index.ts';
import type { Dose } from '../../core/review/index.ts';
import type { FormName, HoldWord, WearFit, WearKind } from '../../core/wear/index.ts';
import type { care } from './languages/en/care.ts';
import type { desk } from './languages/en/desk/index.ts';
import type { entry } from './languages/en/entry.ts';
import type { fault } from './languages/en/fault.ts';
import type { file } from './languages/en/file.ts';
import type { phone } from './languages/en/phone.ts';
import type { terminal } from './languages/en/terminal.ts';
import type { join } from './languages/en/join.ts';
import type { talk } from './languages/en/talk.ts';
import type { propose } from './languages/en/propose.ts';
import type { own } from './languages/en/own.ts';
import type { notices } from './languages/en/notices.ts';
import type { fit } from './languages/en/fit.ts';
import type { common } from './languages/en/desk/common.ts';
import type { places } from './places/en/index.ts';
import type { paper } from './report/en/index.ts';

export interface LanguageName {
  /** In the language itself. */
  readonly name: string;
  /** For Intl and the page: numbers, dates and plurals follow its rules. */
  readonly locale: string;
}

type Named<Id extends string, What extends string> = Readonly<
  Record<Id, Readonly<Record<What, string>>>
>;
type Terms<Id extends string> = Readonly<Record<Id, string>>;

/** The terms of the trade, by the ids of the records: the same on every screen, report and print. */
export interface Glossary {
  /** `name`: short, as a tester reads it. `trade`: the parts of the shoe there. `anatomy`: of the foot. */
  readonly zones: Named<ZoneCode, 'name' | 'trade' | 'anatomy'>;
  readonly rollUps: Terms<RollUpId>;
  /** `meaning`: one line that tells it from its neighbours. */
  readonly kinds: Named<ComplaintKind, 'name' | 'meaning'>;
  /** `low` and `high`: the words at 0 and at 100 of the line. */
  readonly attributes: Named<ComfortAttributeId, 'name' | 'low' | 'high'>;
  /** `low` and `high`: what is too little and too much of it, at the ends of the line; the middle is just right. */
  readonly twoSided: Named<TwoSidedId, 'name' | 'low' | 'high'>;
  /** `role`: who can act on the part. */
  readonly parts: Named<PartId, 'name' | 'role'>;
  /** Who can act on a finding. */
  readonly trades: Terms<Trade>;
  readonly surfaces: Terms<Surface>;
  readonly grounds: Terms<NonNullable<Run['ground']>>;
  readonly socks: Terms<NonNullable<Run['sock']>>;
  readonly painSigns: Terms<PainSign>;
  readonly damages: Terms<DamageReport['what']>;
  readonly runners: Terms<Brief['runner']>;
  readonly uses: Terms<Brief['use']>;
  readonly stages: Terms<Round['stage']>;
  readonly measures: Terms<Measure>;
  readonly units: Terms<MeasureUnit>;
  readonly roles: Terms<Role>;
  /** What the log proves of a complaint; nothing else is said as proof. */
  readonly evidence: Named<EvidenceWord, 'name' | 'meaning'>;
  /** The same in the few words that stand alone; `meaning` says it in a clause. */
  readonly sureness: Named<Sureness, 'name' | 'alone' | 'meaning'>;
  readonly trends: Terms<Trend['word']>;
  /** With what a complaint goes together: more of it, or less. */
  readonly factors: Named<AssociationFactor, 'more' | 'less'>;
  readonly comfortChanges: Terms<ComfortChange['word']>;
  /** What a change did to what it was meant to mend. */
  readonly changeVerdicts: Named<ChangeVerdict, 'name' | 'meaning'>;
  readonly foams: Terms<FoamId>;
  readonly holds: Terms<HoldWord>;
  /** Where a reading goes with distance. */
  readonly directions: Terms<WearFit<WearKind>['direction']>;
  /** Along which form. */
  readonly forms: Terms<FormName>;
  /** Against what wear is set. */
  readonly doses: Terms<Dose>;
  /** Where a fitter says how a pair fits: its name, and what is too little and too much of it. */
  readonly fitPlaces: Named<FitPlace, 'name' | 'little' | 'much'>;
  readonly lacings: Terms<NonNullable<FitTrial['lacing']>>;
  readonly walkWays: Terms<NonNullable<FitTrial['walked']>>;
  readonly heelSlips: Terms<HeelSlip>;
  readonly fitSpots: Terms<FitSpotKind>;
  readonly fitPains: Terms<FitPain>;
}

export type PhoneWords = typeof phone;
export type FaultWords = typeof fault;
export type FileWords = typeof file;
export type CareWords = typeof care;
export type EntryWords = typeof entry;
export type JoinWords = typeof join;
export type TalkWords = typeof talk;
export type ProposeWords = typeof propose;
export type OwnWords = typeof own;
export type NoticeWords = typeof notices;
export type FitWords = typeof fit;
export type DeskWords = typeof desk;
/** What the desk says everywhere. */
export type DeskCommonWords = typeof common;
export type TerminalWords = typeof terminal;
/** The words of the desk's places, by place. */
export type PlaceWords = typeof places;
/** The words of the printed report. */
export type PaperWords = typeof paper;

/** A record as a sentence names it; every part is in the reader's language, and empty where it is not known. */
export interface NamedRecord {
  readonly kind: string;
  readonly name: string;
  readonly at: string;
  readonly pairs: readonly string[];
  readonly tester: string;
  readonly distance: string;
}

/** The whole of a language. */
export interface LanguageFile {
  readonly about: LanguageName;
  readonly glossary: Glossary;
  readonly fault: FaultWords;
  readonly phone: PhoneWords;
  readonly file: FileWords;
  readonly care: CareWords;
  readonly entry: EntryWords;
  readonly join: JoinWords;
  readonly talk: TalkWords;
  readonly propose: ProposeWords;
  readonly own: OwnWords;
  readonly notices: NoticeWords;
  readonly desk: DeskWords;
  readonly terminal: TerminalWords;
  /** These lie in folders of their own (`app/words/report`, `app/words/places`). */
  readonly paper: PaperWords;
  readonly places: PlaceWords;
}
