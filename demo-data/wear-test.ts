/** The invented wear test, written down as revisions and packed into the two demo files. */
import { strToU8 } from 'fflate';
import {
  addRevisions,
  emptyLog,
  newRecordId,
  packBundle,
  sha256OfBytes,
  viewOfLog,
  writeBundle,
  type Body,
  type Complaint,
  type Reading,
  type RecordId,
  type Revision,
  type Round,
  type Run,
  type Sha256,
} from '../core/records/index.ts';
import { writeMeasuring } from './measuring.ts';
import { celsius, kilograms, metres, millimetres, seconds } from '../core/units/index.ts';
import { planNext, PLAN_SEED } from './hand-out-plan.ts';
import { writeFindings } from './findings.ts';
import { seededDice, type Dice } from './random.ts';
import { remarkOn } from './remarks.ts';
import {
  blueprint,
  brief,
  DAY_MS,
  FIRST_DAY,
  PAIRS_PER_ROUND,
  periods,
  rounds,
  SEED,
  TESTERS,
  troubles,
  WEEKS,
  wideFeet,
} from './scenario.ts';
import { marksFrom } from './too-much.ts';
import { oceanTrack } from './track.ts';
import { markUnblinded, UNBLINDED } from './unblinded.ts';
import { newScribe, type Writer } from './writer.ts';

export interface DemoFiles {
  /** The log of the group with its attachments. */
  readonly wearTest: Uint8Array;
  /** One tester's whole phone: its last week is new, the rest comes a second time. */
  readonly lateDelivery: Uint8Array;
}

const OFFSET = '+02:00';
const MINUTE = 60_000;
/** The tester whose last week reaches the group by file. */
const LATE_TESTER = 8;

/** A UTC instant as local time of the invented place, two hours ahead. */
const instant = (ms: number) => new Date(ms + 2 * 60 * MINUTE).toISOString().slice(0, 19) + OFFSET;

const round2 = (value: number) => Math.round(value * 100) / 100;
const clampScore = (value: number) => Math.round(Math.min(100, Math.max(0, value)));

interface TesterPlan {
  readonly id: RecordId;
  readonly writer: Writer;
  readonly massKg: number;
  readonly paceSPerKm: number;
  readonly offset: number;
}

interface PairPlan {
  readonly id: RecordId;
  readonly round: number;
  km: number;
  readonly energyJ: number;
  readonly stackMm: number;
  readonly treadMm: number;
}

/** The published form of foam wear, 0 at new and 1 at 500 km; figures here are invented. */
const wearShare = (km: number) => Math.log(1 + km / 50) / Math.log(1 + 500 / 50);

export const buildDemo = (seed = SEED): DemoFiles => {
  const dice = seededDice(seed);
  // Dice of their own: words change no figure.
  const remarks = seededDice(seed + 1);
  const marksOf = marksFrom(seededDice(seed + 2));
  const scribe = newScribe(dice);
  const start = FIRST_DAY - 7 * DAY_MS;
  const group = scribe.newId(start);
  const lead = scribe.writer(scribe.newId(start));
  const attachments = new Map<Sha256, Uint8Array>();

  const project = lead.write('project', { name: 'Demo trainer K1 (invented)', brief }, start);
  const roundBodies = rounds.map((plan, at): Round => ({
    project,
    name: plan.name,
    order: at + 1,
    stage: plan.stage,
    changes: [...plan.changes],
    foam: plan.foam,
    blueprint: [...blueprint],
    layers: [
      { zone: 'U4', count: at === 0 ? 3 : 2 },
      { zone: 'U3', count: at === 1 ? 3 : 2 },
    ],
  }));
  const roundIds = roundBodies.map((body, at) =>
    lead.write('round', body, start + at * 23 * DAY_MS),
  );
  const testers = Array.from({ length: TESTERS }, (_, at) => writeTester(at));
  const codes = labelCodes(dice, rounds.length * PAIRS_PER_ROUND);
  const pairs = rounds.map((_, round) =>
    Array.from({ length: PAIRS_PER_ROUND }, (_unused, at) => writePair(round, at)),
  );

  function writeTester(at: number): TesterPlan {
    const id = scribe.newId(start);
    const lengthMm = 248 + 3 * at;
    const massKg = Math.round(dice.between(54, 86));
    const wide = wideFeet.has(at) ? 5 : 0;
    const body = {
      code: `T${String(at + 1).padStart(2, '0')}`,
      footLengthMm: { left: millimetres(lengthMm), right: millimetres(lengthMm + (at % 3)) },
      footWidthMm: { left: millimetres(95 + wide), right: millimetres(96 + wide) },
      massKg: kilograms(massKg),
      heightM: metres(round2(1.6 + 0.025 * at)),
      footStrike: at % 4 === 1 ? 'midfoot' : 'rearfoot',
    };
    lead.write('tester', body, start, id);
    return {
      id,
      writer: scribe.writer(id),
      massKg,
      paceSPerKm: dice.between(285, 390),
      offset: dice.normal(0, 8),
    };
  }

  function writePair(round: number, at: number): PairPlan {
    const arrived = FIRST_DAY + (round * 23 - 3) * DAY_MS;
    const id = lead.write(
      'pair',
      {
        project,
        round: roundIds[round],
        code: codes[round * PAIRS_PER_ROUND + at],
        sizeMm: millimetres(255 + 5 * at),
        ...(round === 0 && at === 0 && { carriedInM: metres(12_000) }),
      },
      arrived,
    );
    const pair: PairPlan = {
      id,
      round,
      km: round === 0 && at === 0 ? 12 : 0,
      energyJ: (rounds[round] as (typeof rounds)[number]).energyAtNewJ * dice.normal(1, 0.02),
      stackMm: dice.normal(36, 0.25),
      treadMm: dice.normal(3.2, 0.08),
    };
    // The sixth pair of round 2 came with a heel cup 2.4 mm too wide.
    benchCheck(pair, arrived + 2 * 3600_000, round === 1 && at === 5 ? 2.4 : 0);
    return pair;
  }

  function benchCheck(pair: PairPlan, atMs: number, heelCupMm: number | null): void {
    const g = wearShare(pair.km);
    const reading = (
      measure: Reading['measure'],
      site: string,
      unit: Reading['unit'],
      mean: number,
      gauge: string,
      sd = 0,
    ): Reading[] =>
      (['left', 'right'] as const).map((foot) => ({
        measure,
        site,
        foot,
        unit,
        value: round2(mean + dice.normal(0, sd)),
        gauge,
      }));
    const readings = [
      ...reading('stack-height', 'heel-centre', 'mm', pair.stackMm - 1.1 * g, 'calliper C2', 0.1),
      ...reading(
        'stack-height',
        'forefoot-centre',
        'mm',
        pair.stackMm - 8 - 0.9 * g,
        'calliper C2',
        0.1,
      ),
      ...reading('hardness', 'heel-centre', 'asker-c', 45 + 1.5 * g, 'durometer D1', 0.7),
      ...reading('mass', 'shoe', 'g', 252 - 0.01 * pair.km, 'scale W1', 1.5),
      ...reading(
        'tread-depth',
        'heel-lateral',
        'mm',
        pair.treadMm - 0.0045 * pair.km,
        'depth gauge G4',
        0.05,
      ),
      ...reading(
        'tread-depth',
        'forefoot-medial',
        'mm',
        pair.treadMm - 0.002 * pair.km,
        'depth gauge G4',
        0.05,
      ),
      ...reading(
        'energy-absorbed',
        'heel-centre',
        'J',
        pair.energyJ * Math.exp(-0.28 * g),
        'impact rig R1',
        0.025,
      ),
      ...(heelCupMm === null
        ? []
        : [
            ...reading(
              'dimension',
              'collar-height-lateral',
              'mm',
              pair.round === 0 ? 61.6 : 62.2,
              'calliper C2',
              0.4,
            ),
            ...reading('dimension', 'heel-cup-width', 'mm', 58 + heelCupMm, 'calliper C2', 0.2),
          ]),
    ];
    lead.write(
      'bench-check',
      {
        project,
        pair: pair.id,
        at: instant(atMs),
        ...(pair.km > 0 && { restedH: 30 }),
        temperatureC: celsius(round2(dice.normal(22.5, 0.6))),
        operator: 'Shop A',
        readings,
      },
      atMs,
    );
  }

  function complaintsOf(
    tester: number,
    pair: PairPlan,
    temperatureC: number,
    runM: number,
  ): Complaint[] {
    const at = { tester, round: pair.round, pairKm: pair.km, temperatureC };
    return troubles.flatMap((trouble) => {
      if (!dice.chance(trouble.probability(at))) return [];
      const severity = Math.round(dice.between(...trouble.severity));
      const fromM = metres(Math.round((dice.between(0.1, 0.7) * runM) / 500) * 500);
      return trouble.feet.map((foot) => ({
        foot,
        zone: trouble.zone,
        kind: trouble.kind,
        severity,
        fromM,
      }));
    });
  }

  function writeRun(
    testerAt: number,
    pair: PairPlan,
    startMs: number,
    sendsTrack: boolean,
  ): RecordId {
    const tester = testers[testerAt] as TesterPlan;
    const distanceM = Math.round(dice.between(55, 155)) * 100;
    const day = (startMs - FIRST_DAY) / DAY_MS;
    const temperatureC = Math.round(20 - 0.16 * day + dice.normal(0, 4));
    const durationS = Math.round((distanceM / 1000) * tester.paceSPerKm * dice.normal(1, 0.04));
    const gravel = dice.chance(0.3) ? Math.round(dice.between(1, 8)) / 10 : 0;
    const complaints = complaintsOf(testerAt, pair, temperatureC, distanceM);
    const base = (rounds[pair.round] as (typeof rounds)[number]).comfort + tester.offset;
    const score = (shift: number) => clampScore(base + shift + dice.normal(0, 6));
    const troubled = (kind: string) => (complaints.some((c) => c.kind === kind) ? -18 : 0);
    const run: Run = {
      project,
      pair: pair.id,
      tester: tester.id,
      startedAt: instant(startMs),
      distanceM: metres(distanceM),
      distanceFrom: 'typed',
      durationS: seconds(durationS),
      surfaces: gravel > 0 ? { road: round2(1 - gravel), gravel } : { road: 1 },
      ground: dice.chance(0.2) ? 'wet' : 'dry',
      temperatureC: celsius(temperatureC),
      comfort: {
        overall: score(complaints.length > 0 ? -6 : 0),
        'heel-cushioning': score(-0.03 * pair.km),
        'forefoot-cushioning': score(2 - 0.02 * pair.km),
        'heel-hold': score(troubled('heel-slip')),
        'toe-room': score(troubled('pressure')),
        ventilation: score(troubled('overheating') - 4),
      },
      firstImpression: pair.km === 0,
      // One run in twelve goes unanswered: a tester in a hurry.
      ...(!dice.chance(1 / 12) && {
        feet:
          complaints.length > 0
            ? { answer: 'complaints' as const, complaints }
            : { answer: 'nothing' as const },
      }),
      pain: { score: dice.chance(0.04) ? 2 : 0 },
    };
    const remark = remarkOn(remarks, { tester: testerAt, round: pair.round, complaints });
    const { offset } = tester;
    const marks = marksOf({ tester: testerAt, round: pair.round, pairKm: pair.km, offset });
    const told: Run = {
      ...run,
      ...(marks && { comfort2: marks }),
      ...(remark !== null && { words: remark }),
    };
    const savedMs = startMs + durationS * 1000 + 3 * MINUTE;
    const id = scribe.newId(savedMs);
    if (sendsTrack) {
      const gpx = strToU8(oceanTrack(startMs, distanceM, durationS));
      const sha256 = sha256OfBytes(gpx);
      attachments.set(sha256, gpx);
      tester.writer.write(
        'attachment',
        { project, record: id, sha256, mediaType: 'application/gpx+xml', bytes: gpx.length },
        savedMs,
      );
    }
    tester.writer.write('run', told, savedMs, id);
    pair.km += distanceM / 1000;
    return id;
  }

  let unblinded: [RecordId, Body] | null = null;
  const checkpoints = [50, 150, 300];
  const tracked = new Set<number>();
  for (const [periodAt, period] of periods.entries()) {
    for (const { tester, round, pair: pairAt } of period.wearings) {
      const pair = (pairs[round] as PairPlan[])[pairAt] as PairPlan;
      const from = FIRST_DAY + period.fromDay * DAY_MS + 6 * 3600_000;
      const last = periodAt === periods.length - 1;
      const handOut = {
        project,
        pair: pair.id,
        tester: (testers[tester] as TesterPlan).id,
        from: instant(from - 6 * 3600_000),
        blind: true,
        ...(!last && { until: instant(FIRST_DAY + (period.toDay + 1) * DAY_MS - 1000) }),
      };
      const handOutId = lead.write('hand-out', handOut, from - 6 * 3600_000);
      if (tester === UNBLINDED.tester && round === UNBLINDED.round)
        unblinded = [handOutId, handOut];
      for (let day = period.fromDay; day <= period.toDay; day++) {
        if (!dice.chance(0.69)) continue;
        const startMs = FIRST_DAY + day * DAY_MS + Math.round(dice.between(4, 17) * 60) * MINUTE;
        const before = pair.km;
        // Three testers send the track of one run each.
        const sendsTrack = last && day >= 58 && tester < 3 && !tracked.has(tester);
        if (sendsTrack) tracked.add(tester);
        writeRun(tester, pair, startMs, sendsTrack);
        const passed = checkpoints.find((km) => before < km && pair.km >= km);
        // Three pairs of each round go to the bench at each checkpoint.
        if (passed !== undefined && pairAt < 3) benchCheck(pair, startMs + 34 * 3600_000, null);
      }
    }
  }

  writeIncidents();
  writeMeasuring(
    lead,
    project,
    roundBodies.map((body, at) => ({ id: roundIds[at] as RecordId, body })),
    FIRST_DAY + (WEEKS * 7 - 1) * DAY_MS + 8 * 3600_000,
    instant,
  );
  writeNextPlan();

  function writeNextPlan(): void {
    const at = FIRST_DAY + (WEEKS * 7 - 1) * DAY_MS + 2 * 3600_000;
    const records = viewOfLog(addRevisions(emptyLog, scribe.revisions));
    const from = instant(FIRST_DAY + (WEEKS * 7 + 2) * DAY_MS);
    const plan = planNext(records, { project, at: instant(at), from });
    lead.write('hand-out-plan', plan, at, newRecordId(at, seededDice(PLAN_SEED).bytes(16)));
  }

  function writeIncidents(): void {
    const end = FIRST_DAY + (WEEKS * 7 - 1) * DAY_MS;
    const torn = (pairs[1] as PairPlan[])[3] as PairPlan;
    const wearer = testers[7] as TesterPlan;
    const at = FIRST_DAY + 46 * DAY_MS + 18 * 3600_000;
    wearer.writer.write(
      'damage-report',
      {
        project,
        pair: torn.id,
        tester: wearer.id,
        at: instant(at),
        what: 'sole-peeling',
        foot: 'right',
        words: 'The outsole lifts at the lateral heel.',
      },
      at,
    );
    lead.write(
      'stop-use',
      {
        project,
        pairs: [torn.id],
        reason: 'Outsole bond failed on one shoe. Do not run in this pair.',
        from: instant(at + 3600_000),
      },
      at + 3600_000,
    );
    lead.write(
      'finding',
      {
        project,
        round: roundIds[0],
        title: 'Heel slips in the heel cup',
        part: 'upper-pattern',
        kind: 'heel-slip',
        zone: 'U10',
        priority: 'high',
        wanted: 'Draw in the heel curve, raise the lateral collar',
        wantedMm: millimetres(3),
        carriedBy: roundIds[1],
        state: 'carried-out',
      },
      FIRST_DAY + 21 * DAY_MS,
    );
    const tester = testers[1] as TesterPlan;
    const pair = (pairs[2] as PairPlan[])[1] as PairPlan;
    const runBody = (distanceM: number, startMs: number): Run => ({
      project,
      pair: pair.id,
      tester: tester.id,
      startedAt: instant(startMs),
      distanceM: metres(distanceM),
      distanceFrom: 'typed',
      durationS: seconds(2700),
      feet: { answer: 'nothing' },
    });
    const mistyped = end + 5 * 3600_000;
    const edited = tester.writer.write('run', runBody(80_000, mistyped), mistyped + 50 * MINUTE);
    tester.writer.change(edited, runBody(8_000, mistyped), mistyped + 52 * MINUTE);
    const doubled = tester.writer.write('run', runBody(8_000, mistyped), mistyped + 55 * MINUTE);
    tester.writer.erase(doubled, mistyped + 56 * MINUTE);
    lead.write('lab-booking', { project, at: instant(end), rig: 'R1', hours: 4 }, end);
  }

  if (unblinded) markUnblinded(lead, ...unblinded, FIRST_DAY + WEEKS * 7 * DAY_MS);
  const late = testers[LATE_TESTER] as TesterPlan;
  const lastWeek = FIRST_DAY + 63 * DAY_MS;
  const stampMs = (revision: Revision) => Number.parseInt(revision.stamp.slice(0, 12), 16);
  const isLate = (revision: Revision) =>
    revision.author === late.id && stampMs(revision) >= lastWeek;
  // The makers had not seen what a late phone still held.
  const soFar = viewOfLog(
    addRevisions(
      emptyLog,
      scribe.revisions.filter((revision) => !isLate(revision)),
    ),
  );
  writeFindings(lead, soFar, project, roundIds, instant);
  const made = instant(FIRST_DAY + WEEKS * 7 * DAY_MS);
  const origin = { madeAt: made, group, groupName: 'Demo group (invented)' };
  return {
    wearTest: packBundle(
      writeBundle(
        { ...origin, by: lead.member },
        scribe.revisions.filter((r) => !isLate(r)),
      ),
      attachments,
    ),
    lateDelivery: packBundle(
      writeBundle(
        { ...origin, by: late.id },
        scribe.revisions.filter((r) => r.author === late.id),
      ),
    ),
  };
};

/** Codes for tongue labels: three digits in a drawn order, so that they tell nothing of the round. */
const labelCodes = (dice: Dice, count: number): string[] => {
  const codes = new Set<string>();
  while (codes.size < count) codes.add(String(Math.floor(dice.between(100, 1000))));
  return [...codes];
};
