import { countPairs, countRuns, countTesters } from '../count.ts';

/** Hand-out plan, size of a test, and the check of the panel. */
export const panel = {
  plan: {
    title: 'Hand-out plan',
    go: 'Hand-out plan',
    lead: 'Who wears which pair when: by chance from a seed, and as even as sizes and absences allow. Only leads see it, because it tells pairs apart.',
    none: 'No plan yet.',
    make: 'Draw a new plan',
    rounds: 'Rounds to compare',
    periods: 'Periods',
    periodsHint: 'A tester wears one pair a period; at most as many periods as rounds.',
    periodsOfOne: 'With one round there is one period: each tester keeps one pair.',
    weeks: 'Weeks a period',
    from: 'First day',
    allowed: 'Pair and foot may differ by, mm',
    allowedHint: 'Size of the pair against the longer foot.',
    outComeBack: 'Pairs that are out now are back by the first day',
    who: 'Who takes part, and who is away when',
    takesPart: 'takes part',
    awayIn: (tester: string, period: number) => `${tester} is away in period ${period}`,
    takesPartName: (tester: string) => `${tester} takes part`,
    awayShort: (period: number) => `away in ${period}`,
    draw: 'Draw the plan',
    drawAgain: 'Draw with another seed',
    drawing: 'Drawing …',
    save: 'Save the plan',
    saved: (date: string) => `Plan of ${date}`,
    which: 'Plan',
    seed: (seed: number) => `Seed ${seed}: the same question and seed draw the same plan.`,
    trouble: {
      'no-round': 'Choose at least one round.',
      'no-tester': 'Choose at least one tester.',
      'more-periods-than-rounds': 'There are more periods than rounds: nobody wears a round twice.',
      'no-pair': 'No pair of these rounds can be handed out.',
    },
    leftOut: (out: number, withdrawn: number) =>
      [
        out > 0 ? `${countPairs(out)} left out because they are still out` : '',
        withdrawn > 0 ? `${countPairs(withdrawn)} left out because they are withdrawn` : '',
      ]
        .filter(Boolean)
        .join('; '),
    withoutSize: (names: string) =>
      `No size is known of ${names}: note the foot length, or they get no pair.`,
    tester: 'Tester',
    period: (number: number) => `Period ${number}`,
    away: 'away',
    gone: 'no longer takes part',
    emptyPlace: 'no pair',
    handedOut: 'handed out',
    empty: (count: number) =>
      `${count} ${count === 1 ? 'place has' : 'places have'} no pair, because none that fits was left.`,
    basis: {
      'carry-over-balanced':
        'Every round comes equally often in each period and equally often after each other round (Williams 1949).',
      'balanced-blocks':
        'Every round is worn equally often, and every two rounds by equally many testers (balanced incomplete blocks).',
      'best-found': 'The evenest order that was found for these testers.',
    },
    evenness: 'How even it is',
    table: {
      inPeriod: 'Same round in a period',
      inAll: 'Round in all',
      together: 'Two rounds worn by the same tester',
      after: 'One round right after another',
    },
    count: (least: number, most: number, differ: number) =>
      least === most
        ? `${most} times`
        : `${least} to ${most} times, ${differ === 0 ? 'the same where it should be' : `at most ${differ} apart`}`,
    line: (table: string, count: string, state: string) => `${table}: ${count}; ${state}`,
    even: 'as even as can be',
    over: (imbalance: number) => `${imbalance} above the least possible`,
    whole: (imbalance: number, least: number | null) =>
      imbalance === 0
        ? 'Imbalance 0: the theoretical optimum. No plan can be more even.'
        : least === imbalance
          ? `Imbalance ${imbalance}: no plan of so many testers, rounds and periods has less (proven).`
          : least === null
            ? `Imbalance ${imbalance}; 0 would be perfectly even. Whether these sizes and absences allow less is not known.`
            : `Imbalance ${imbalance}; without limits of size the least would be ${least}.`,
    how: 'Imbalance: sum of the squared counts above what counts that differ by at most 1 would give, over the four tables.',
    handOut: (period: number) => `Hand out period ${period}`,
    handOutHow: 'Takes back the pairs of the periods before and makes blind hand-outs.',
    handedOutNow: (count: number) => `${countPairs(count)} handed out`,
    cannot: {
      withdrawn: (pair: string, tester: string) => `Pair ${pair} for ${tester}: withdrawn.`,
      out: (pair: string, tester: string) =>
        `Pair ${pair} for ${tester}: still in somebody’s hands. Take it back, then hand out again.`,
    },
    takeAllBack: 'These pairs are back: take them back and hand out',
    allHandedOut: 'All periods were handed out.',
    dropOut: 'Drop out',
    dropOutName: (tester: string) => `${tester} drops out`,
    dropOutFrom: (tester: string, period: number) =>
      `${tester} takes no part from period ${period} on. What was handed out stays; the rest is drawn anew for the others.`,
    imbalances: (before: number, untouched: number, after: number) =>
      `Imbalance before: ${before}. Without the tester and with nothing else changed: ${untouched}. Drawn anew: ${after}.`,
    keep: 'Save the new plan',
    print: 'Print',
    notDrawn: 'No plan can be drawn for the rest.',
    drawCode: 'Draw a code',
    noCode: 'All three-digit codes are used.',
  },
  power: {
    title: 'How many testers and runs does it take?',
    testers: 'Testers',
    runs: 'Runs of each, in each round',
    before: 'Runs with the complaint before, %',
    after: 'and after the change, %',
    comfort: 'Difference of comfort, points of 100',
    fall: (t: number, r: number, before: string, after: string, share: string) =>
      `With ${countTesters(t)} and ${countRuns(r)} each you would see a fall from ${before} to ${after} in ${share} of tests.`,
    about: (share: string) => `about ${share}`,
    nearlyAll: 'more than 99 %',
    hardlyAny: 'less than 1 %',
    noFall: 'There is no fall to see.',
    comfortLine: (t: number, points: string, share: string) =>
      `With ${countTesters(t)} you would see a difference of comfort of ${points} points in ${share} of tests.`,
    seen: (t: number, share: string, of: string) =>
      `A complaint that ${of} of testers have would be seen by at least one of ${countTesters(t)} in ${share} of tests.`,
    needed: (count: number | null) =>
      count === null
        ? 'More than 200 testers would be needed for 80 %.'
        : `For 80 % it takes ${countTesters(count)}.`,
    neededOnce: (count: number | null) =>
      count === null
        ? 'More than 200 testers would be needed for 95 %.'
        : `For 95 % it takes ${countTesters(count)}.`,
    how: (alike: string, sd: string) =>
      `Exact, two-sided at 5 %, the same testers in both rounds. Complaint: sign test over testers of their shares of runs; testers differ (two runs of one tester correlate by ${alike}: judgement, no source), each round drawn on its own. Comfort: paired t test; testers’ differences have a standard deviation of ${sd} (Hébert-Losier 2025).`,
  },
  check: {
    title: 'Does the panel answer steadily?',
    nobody: 'Nobody has logged a run yet.',
    few: 'Too little to compare: at least two testers must have scored at least two rounds in two sessions each.',
    same: 'No tester’s scores differ between the rounds: there is nothing to agree on.',
    alike:
      'All testers’ scores move by exactly the same from round to round. Without any difference nobody can say how much of that is chance.',
    icc: (t: number, rounds: string) =>
      `${countTesters(t)} scored ${rounds}. Share of the spread of overall comfort that comes from the rounds:`,
    correlation: {
      shown: (icc: string, lower: string, upper: string) =>
        `${icc} (95 % interval ${lower} to ${upper})`,
      open: (icc: string, upper: string) =>
        `${icc}, but it may be 0: agreement is not shown yet (95 % interval 0 to ${upper})`,
      none: (upper: string | null) =>
        `no agreement shown${upper === null ? '' : ` (95 % interval 0 to ${upper})`}`,
    },
    one: (correlation: string) => `one tester’s score: ${correlation}`,
    oneLevelled: (correlation: string) =>
      `after each tester’s own level is taken off: ${correlation}`,
    panel: (correlation: string) => `the panel’s mean: ${correlation}`,
    error: (
      se: string,
      lower: string,
      upper: string,
      change: string,
      groups: number,
      scores: number,
    ) =>
      `From session to session one tester’s score in the same pair moves by ${se} of 100 (standard error; 95 % interval ${lower} to ${upper}; ${scores} scores in ${groups} ${groups === 1 ? 'pair' : 'pairs'} in one tester’s hands). Two single scores that differ by less than ${change} are not told apart.`,
    noError:
      'No tester has scored the same pair twice: how far a score moves by itself is not known.',
    ask: 'Worth a friendly question',
    agreement: 'How well scores agree',
    none: (t: number, enough: number) =>
      enough === 0
        ? 'Nobody has five logs yet.'
        : `Nothing to ask: ${enough} of ${countTesters(t)} have five logs or more.`,
    question: {
      'same-score': (tester: string, logs: number, least: string, most: string) =>
        `${tester}: overall comfort between ${least} and ${most} in all ${logs} logs. Ask whether the pairs really felt alike, or whether the line is hard to use.`,
      'no-complaint': (tester: string, asked: number, share: string, others: number, p: string) =>
        `${tester}: no complaint in ${asked} asked runs; ${countTesters(others)} have one in ${share} (adjusted p ${p}). Ask whether all is well, or whether small things seem not worth a word.`,
      'many-complaints': (
        tester: string,
        reported: number,
        asked: number,
        share: string,
        others: number,
        p: string,
      ) =>
        `${tester}: a complaint in ${reported} of ${asked} asked runs; the other ${others} in ${share} (adjusted p ${p}). Ask about feet, size and socks: they may feel what others miss.`,
      'written-late': (tester: string, late: number, logs: number, median: string) =>
        `${tester}: ${late} of ${logs} logs were written more than two days after the run (half of them after ${median} h). Ask what would make it easier on the doorstep.`,
      clock: (tester: string, logs: number) =>
        `${tester}: ${countRuns(logs)} written down before they began. Ask them to look at the phone’s clock and the date they typed.`,
      'other-way-round': (tester: string, r: string, lower: string, upper: string, cells: number) =>
        `${tester}: scores rise where those of the others fall (r ${r}, 95 % interval ${lower} to ${upper}, ${cells} attributes of rounds). Ask which end of the line means good.`,
    },
    how: 'Questions, not marks: who answers otherwise may be the one who is right. Agreement: intraclass correlations (2,1), (3,1), (2,k) of Shrout & Fleiss 1979, means of at least two sessions after the first wearing; intervals by McGraw & Wong 1996, from 0 up. Error: Bland & Altman 1986, with whatever kilometres change in it. Complaints: what the other testers foretell (beta-binomial, Skellam 1948), Holm over testers. Late: when the phone first saved it. Limits without a source: judgement.',
  },
};
