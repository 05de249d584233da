/** What a language file holds. A file that misses a message, or has one of the wrong form, does not compile. */
import type {
  ComfortAttributeId,
  ComplaintKind,
  FoamId,
  PartId,
  RollUpId,
  Trade,
  ZoneCode,
} from '../../core/foot/index.ts';
import type {
  AssociationFactor,
  ComfortChange,
  EvidenceWord,
  Trend,
} from '../../core/complaints/index.ts';
import type { RunOddity } from '../../core/mileage/index.ts';
import type {
  Brief,
  BundleProblem,
  ChangeVerdict,
  DamageReport,
  LeftOut,
  Measure,
  MeasureUnit,
  PainSign,
  Role,
  Round,
  Run,
  Surface,
  UnpackProblem,
} from '../../core/records/index.ts';
import type { Dose } from '../../core/review/index.ts';
import type { FormName, HoldWord, WearFit, WearKind } from '../../core/wear/index.ts';
import type { care, desk, entry, fault, file, phone } from './languages/en.ts';
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
}

export type PhoneWords = typeof phone;
export type FaultWords = typeof fault;
export type FileWords = typeof file;
export type CareWords = typeof care;
export type EntryWords = typeof entry;
export type DeskWords = typeof desk;
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

export interface TerminalWords {
  /** The ids that --language and --trade take, such as `en|zh`. */
  readonly usage: (languages: string, trades: string) => string;
  readonly cannotRead: (file: string, why: string) => string;
  readonly unpack: Readonly<Record<UnpackProblem, string>>;
  readonly problem: (problem: BundleProblem) => string;
  readonly unreadable: (line: number, record: string, problem: string) => string;
  readonly noProject: (name: string | undefined, names: readonly string[]) => string;
  readonly wrote: (file: string) => string;
  /** `order`: the number that was asked for; absent: the project has no round at all. */
  readonly noRound: (order: string | undefined, rounds: readonly string[]) => string;
  readonly evidence: (
    pairs: number,
    testers: number,
    haveRun: number,
    runs: number,
    km: string,
  ) => string;
  readonly brief: (km: string) => string;
  readonly pairs: string;
  readonly silent: (days: number) => string;
  readonly pair: string;
  readonly round: string;
  readonly size: string;
  readonly distance: string;
  readonly ofBrief: string;
  readonly runs: string;
  readonly surfaces: string;
  readonly holder: string;
  readonly note: string;
  readonly stopUse: string;
  readonly complaints: (round: string) => string;
  readonly noComplaint: string;
  readonly zone: string;
  readonly complaint: string;
  readonly testersOnce: string;
  readonly testersTwice: string;
  readonly reportedRuns: string;
  readonly leftRight: string;
  readonly severity: string;
  readonly proof: string;
  readonly bench: string;
  readonly noBench: string;
  readonly measure: string;
  readonly readings: string;
  readonly deviations: string;
  readonly deviation: string;
  readonly nominal: string;
  readonly reading: string;
  readonly damages: string;
  readonly oddities: string;
  readonly oddity: Readonly<Record<RunOddity['why'], string>>;
  readonly leftOut: Readonly<
    Record<Exclude<LeftOut['why'], 'unreadable'>, (count: number) => string>
  >;
  readonly changes: string;
  /** What becomes of records that cannot be read, and what to do about them. */
  readonly unread: string;
}

/** The whole of a language file. */
export interface LanguageFile {
  readonly about: LanguageName;
  readonly glossary: Glossary;
  readonly fault: FaultWords;
  readonly phone: PhoneWords;
  readonly file: FileWords;
  readonly care: CareWords;
  readonly entry: EntryWords;
  readonly desk: DeskWords;
  readonly terminal: TerminalWords;
  /** Lies in a folder of its own (`app/words/report`). */
  readonly paper: PaperWords;
}
