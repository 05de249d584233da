/**
 * Which data does each trade look at first, whether or not a finding is addressed to it? Common practice, no source:
 * a choice of what to print on whose sheet, never a cause.
 */
import type { ComfortAttributeId } from './comfort-attributes.ts';
import { complaintKinds, kindsOfComplaint, type ComplaintKind } from './complaint-kinds.ts';
import { tradeOf, type Trade } from './parts.ts';
import { suspectsOf } from './suspects.ts';
import type { ZoneCode } from './zones.ts';

export interface TradeData {
  readonly attributes: readonly ComfortAttributeId[];
  /** Measures and units of its wear curves, as in `core/wear`. */
  readonly wear: readonly string[];
  /** Sites of its dimensions on arrival; a name that ends with `-` stands for all that begin with it. */
  readonly sites: readonly string[];
  /** Measures beside dimensions that it checks on arrival. */
  readonly measures: readonly string[];
  /** What comes apart in its hands. */
  readonly damages: readonly string[];
  /** Whether layers of material are counted for it. */
  readonly layers: boolean;
}

const dataOf: Readonly<Record<Trade, TradeData>> = {
  last: {
    attributes: ['overall', 'fit-length', 'toe-room', 'heel-hold', 'midfoot-hold'],
    wear: [],
    sites: ['internal-length', 'heel-cup-width', 'back-height', 'last-'],
    measures: [],
    damages: [],
    layers: false,
  },
  upper: {
    attributes: ['overall', 'heel-hold', 'midfoot-hold', 'toe-room', 'inside-feel'],
    wear: [],
    sites: [
      'collar-height-',
      'back-height',
      'heel-cup-width',
      'toe-cap-length',
      'vamp-length',
      'eyestay-length',
      'eyelet-pitch',
      'tongue-length',
      'stitch-margin',
    ],
    measures: [],
    damages: ['upper-torn', 'eyelet-torn', 'heel-counter-broken'],
    layers: true,
  },
  materials: {
    attributes: ['overall', 'ventilation', 'inside-feel', 'toe-room', 'weight-feel'],
    wear: ['mass g'],
    sites: [],
    measures: ['mass'],
    damages: ['upper-torn', 'heel-counter-broken'],
    layers: true,
  },
  foam: {
    attributes: ['overall', 'heel-cushioning', 'forefoot-cushioning', 'arch', 'weight-feel'],
    wear: [
      'energy-absorbed J',
      'energy-returned J',
      'energy-returned %',
      'impact-peak N',
      'hardness asker-c',
      'stack-height mm',
    ],
    sites: ['sockliner-thickness'],
    measures: ['stack-height', 'hardness'],
    damages: [],
    layers: false,
  },
  tooling: {
    attributes: ['overall', 'stability', 'flexibility', 'weight-feel'],
    wear: ['tread-depth mm', 'hardness shore-a', 'mass g'],
    sites: ['outsole-', 'heel-cup-width'],
    measures: ['tread-depth', 'stack-height', 'mass'],
    damages: ['sole-peeling', 'tread-torn', 'plate-cracked', 'other'],
    layers: false,
  },
};

/** What a trade looks at first. */
export const tradeData = (trade: Trade): TradeData => dataOf[trade];

/** The trades that are usually asked first about a complaint; those asked second where nobody is. */
export const tradesOfComplaint = (kind: ComplaintKind, zone: ZoneCode): readonly Trade[] => {
  const { first, second } = suspectsOf(kind, zone);
  return [...new Set((first.length > 0 ? first : second).map((part) => tradeOf[part]))];
};

/** The complaints that usually point to the trade, wherever they are felt. */
export const kindsOfTrade = (trade: Trade): readonly ComplaintKind[] =>
  complaintKinds.filter((kind) =>
    kindsOfComplaint[kind].first.some((zone) => tradesOfComplaint(kind, zone).includes(trade)),
  );

/** From this share on of a zone's usual complaints, words that name none of them are the trade's to read. Judgement. */
const MOST_OF_ZONE = 0.5;

/**
 * Whether words about a zone are the trade's to read: it is looked at first for the kind that they name, else for most
 * kinds that are usually felt there.
 * @param kind null: the words name none
 */
export const isWordOfTrade = (
  { zone, kind }: { readonly zone: ZoneCode; readonly kind: ComplaintKind | null },
  trade: Trade,
): boolean => {
  const isOwn = (one: ComplaintKind) => tradesOfComplaint(one, zone).includes(trade);
  if (kind !== null) return isOwn(kind);
  const usual = complaintKinds.filter((one) => kindsOfComplaint[one].first.includes(zone));
  return usual.filter(isOwn).length > MOST_OF_ZONE * usual.length;
};

/** Whether a site on arrival, or another measure, is one that the trade checks. */
export const isOnSheet = (
  { measure, site }: { readonly measure: string; readonly site: string },
  trade: Trade,
): boolean =>
  measure === 'dimension'
    ? dataOf[trade].sites.some((one) => (one.endsWith('-') ? site.startsWith(one) : site === one))
    : dataOf[trade].measures.includes(measure);
