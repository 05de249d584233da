/**
 * What does a round ask its makers to do? The rows of the report's first page, each with what the log proves of it, and
 * one sentence above them by rule. "Change" is said only of what is proved or what a lead asked for in a finding;
 * "keep" only where every limit holds.
 */
import type { Callout, ReportedFinding, RoundReport, VerdictItem } from '../review/index.ts';
import { isOnSheet, tradeData, tradeOf, tradesOfComplaint, type Trade } from '../foot/index.ts';
import { unitsOf, type RecordId } from '../records/index.ts';
import { surenessOf, type Sureness } from '../complaints/index.ts';
import { stampOf, type Claim, type Stamp } from './stamp.ts';

/** What is to be done about a row. */
export type DecisionAct = 'change' | 'look' | 'watch' | 'keep';

export interface DecisionRow {
  readonly act: DecisionAct;
  /** What shows it on the shoe; null: a finding that nothing drawn belongs to. */
  readonly callout: Callout | null;
  readonly finding: ReportedFinding | null;
  /** How sure it is: of a complaint, else the stamp of its limit; `asked`: a lead's finding alone. */
  readonly sure: Sureness | Stamp | 'asked';
  /** How much more is needed, in `unit`, as the log tells it; null: no number follows from it. */
  readonly amount: { readonly value: number; readonly unit: 'mm' | 'km' } | null;
}

export type DecisionHeadline = { readonly claims: Claim } & (
  | { readonly case: 'nobody-ran' }
  | {
      readonly case: 'change';
      readonly change: readonly DecisionRow[];
      /** Pairs to look at first: they come apart. */
      readonly look: readonly RecordId[];
      /** Limits that are still open. */
      readonly open: number;
    }
  | { readonly case: 'look'; readonly look: readonly RecordId[]; readonly open: number }
  | { readonly case: 'fails'; readonly what: VerdictItem['what']; readonly open: number }
  | { readonly case: 'watch'; readonly watch: readonly DecisionRow[]; readonly open: number }
  | { readonly case: 'keep'; readonly limits: number }
  | { readonly case: 'go-on'; readonly open: number }
);

/** What rows and headline are made of. */
export type DecisionFacts = Pick<
  RoundReport,
  'callouts' | 'findings' | 'verdict' | 'wear' | 'project'
> & { readonly round: { readonly size: { readonly runs: number } } };

/** More than this nobody reads in a headline. */
const MOST_NAMED = 3;

const isOpen = ({ body }: ReportedFinding): boolean =>
  body.state !== 'closed' && body.outcome === undefined;

/** The finding that speaks of what is drawn. */
const findingOf = (
  callout: Callout,
  findings: readonly ReportedFinding[],
): ReportedFinding | null =>
  findings.find(({ body: { kind, zone, evidence, damage } }) => {
    switch (callout.what) {
      case 'complaint':
      case 'better':
        return kind === callout.kind && (zone === undefined || zone === callout.zone);
      case 'out-of-tolerance':
        return evidence?.place?.site === callout.site && evidence.place.measure === callout.measure;
      case 'wear':
        return (
          evidence?.place?.site === callout.site && evidence.place.measure === callout.limit.measure
        );
      case 'damage':
        return damage === callout.damage;
    }
  }) ?? null;

const limitItem = (callout: Callout & { readonly what: 'wear' }, { verdict }: DecisionFacts) =>
  verdict.items.find(
    (item): item is Extract<VerdictItem, { what: 'wear' }> =>
      item.what === 'wear' && item.limit === callout.limit && item.site === callout.site,
  );

const sureOf = (callout: Callout, facts: DecisionFacts): DecisionRow['sure'] => {
  switch (callout.what) {
    case 'complaint':
      return surenessOf(callout.word, callout.testers);
    case 'wear': {
      const item = limitItem(callout, facts);
      return item ? stampOf(item.word) : 'open';
    }
    case 'better':
      return callout.verdict === 'mended' ? 'holds' : 'open';
    case 'out-of-tolerance':
    case 'damage':
      return 'fails';
  }
};

const actOf = (
  callout: Callout,
  sure: DecisionRow['sure'],
  finding: ReportedFinding | null,
): DecisionAct => {
  if (callout.what === 'better') return 'keep';
  if (callout.what === 'damage' || callout.what === 'out-of-tolerance') return 'look';
  const asked = finding !== null && isOpen(finding) && finding.body.wanted !== undefined;
  return sure === 'clear' || sure === 'fails' || asked ? 'change' : 'watch';
};

/** How much deeper or thicker a new pair must be to reach the brief's distance; only where the limit is proved to fail. */
const amountOf = (callout: Callout, facts: DecisionFacts): DecisionRow['amount'] => {
  if (callout.what === 'out-of-tolerance')
    return callout.unit === 'mm' ? { value: -callout.deviation, unit: 'mm' } : null;
  if (callout.what !== 'wear') return null;
  const item = limitItem(callout, facts);
  if (item?.word !== 'does-not-hold') return null;
  const look = facts.wear.find(({ kind, site }) => kind === item.kind && site === item.site);
  const there = look?.atBrief?.value?.median;
  return item.kind.endsWith(' mm') && callout.limit.basis === 'reading' && there !== undefined
    ? { value: callout.limit.value - there, unit: 'mm' }
    : { value: (callout.briefM - callout.reachedM) / 1000, unit: 'km' };
};

const order: readonly DecisionAct[] = ['look', 'change', 'watch', 'keep'];

/** The rows of the first page: what comes apart, what to change, what to watch, what to keep. */
export const decisionRows = (facts: DecisionFacts): readonly DecisionRow[] => {
  const used = new Set<RecordId>();
  const drawn = facts.callouts.map((callout): DecisionRow => {
    const finding = findingOf(callout, facts.findings);
    if (finding) used.add(finding.id);
    const sure = sureOf(callout, facts);
    return {
      act: actOf(callout, sure, finding),
      ...{ callout, finding, sure },
      amount: amountOf(callout, facts),
    };
  });
  const rest = facts.findings
    .filter((finding) => !used.has(finding.id) && isOpen(finding))
    .map((finding): DecisionRow => ({
      act: finding.body.wanted === undefined ? 'watch' : 'change',
      callout: null,
      finding,
      sure: 'asked',
      amount: null,
    }));
  const rows = [...drawn, ...rest];
  return order.flatMap((act) => rows.filter((row) => row.act === act));
};

const concerns = (callout: Callout, trade: Trade): boolean => {
  switch (callout.what) {
    case 'complaint':
    case 'better':
      return tradesOfComplaint(callout.kind, callout.zone).includes(trade);
    case 'wear':
      return tradeData(trade).wear.includes(
        `${callout.limit.measure} ${unitsOf[callout.limit.measure][0]}`,
      );
    case 'damage':
      return tradeData(trade).damages.includes(callout.kind);
    case 'out-of-tolerance':
      return isOnSheet(callout, trade);
  }
};

/** The rows that a trade is asked to act on, or that are usually looked at first in its hands. */
export const rowsOfTrade = (rows: readonly DecisionRow[], trade: Trade): readonly DecisionRow[] =>
  rows.filter(
    ({ callout, finding }) =>
      (finding !== null && tradeOf[finding.body.part] === trade) ||
      (callout !== null && concerns(callout, trade)),
  );

/**
 * The report's first sentence.
 * @param rows of the same facts
 */
export const decisionHeadline = (
  facts: DecisionFacts,
  rows: readonly DecisionRow[],
): DecisionHeadline => {
  if (facts.round.size.runs === 0) return { case: 'nobody-ran', claims: 'nothing' };
  const { items, word } = facts.verdict;
  const open = items.filter((item) => item.word === 'not-known-yet').length;
  const acts = (act: DecisionAct) => rows.filter((row) => row.act === act);
  const look = [
    ...new Set(
      acts('look').flatMap(({ callout }) => (callout?.what === 'damage' ? [callout.pair] : [])),
    ),
  ];
  const change = acts('change').slice(0, MOST_NAMED);
  if (change.length > 0) {
    const proved = change.every(({ sure }) => sure === 'clear' || sure === 'fails');
    return {
      case: 'change',
      claims: proved && stampOf(word) === 'fails' ? 'fails' : 'nothing',
      ...{ change, look, open },
    };
  }
  if (look.length > 0) return { case: 'look', claims: 'nothing', look, open };
  const failing = items.find((item) => item.word === 'does-not-hold');
  if (failing) return { case: 'fails', claims: 'fails', what: failing.what, open };
  if (word === 'holds') return { case: 'keep', claims: 'holds', limits: items.length };
  const watch = acts('watch').slice(0, 2);
  return watch.length > 0
    ? { case: 'watch', claims: 'nothing', watch, open }
    : { case: 'go-on', claims: 'nothing', open };
};
