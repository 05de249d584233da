import { countPairs, countRuns, countTesters } from '../count.ts';

export const blueprint = {
  /** Of a reading, a mean of readings, or a difference. */
  conformity: {
    conforming: 'conforms (proved)',
    undecided: 'undecided: too near the limit for this gauge',
    'not-conforming': 'does not conform (proved)',
    inside: 'read inside; the gauge’s uncertainty is not known',
    outside: 'read outside; the gauge’s uncertainty is not known',
  },
  disagree: 'the readings contradict each other: read again',
  mark: 'out of tolerance',
  counted: {
    conforming: (count: number) => `${count} proved within tolerance`,
    inside: (count: number) => `${count} read within it, the gauge’s uncertainty not known`,
  },
  counts: (proved: number, outside: number, undecided: number) =>
    [
      proved > 0
        ? `${proved} ${proved === 1 ? 'dimension' : 'dimensions'} proved out of tolerance`
        : '',
      outside > 0
        ? `${outside} ${outside === 1 ? 'dimension' : 'dimensions'} read out of tolerance (gauge’s uncertainty not known)`
        : '',
      undecided > 0 ? `${undecided} undecided` : '',
    ]
      .filter(Boolean)
      .join(', '),
  summary: (judged: number, counts: string) =>
    `${judged} ${judged === 1 ? 'dimension was' : 'dimensions were'} read on arrival: ${counts}.`,
  nothingOut: 'Nothing was read out of tolerance, and nothing is undecided.',
  showAll: 'Show all dimensions',
  how: 'Conformity is proved from a probability of 95 % on that the true value lies within the limits (JCGM 106:2012), which is a guard band of 1.65 standard uncertainties inside each limit (ISO 14253-1:2017); out of tolerance is proved beyond a limit and its guard band. Of several readings the mean counts; repeating makes only the repeatable part of the uncertainty smaller.',
  reading: 'Read',
  readings: (count: number) => `mean of ${count}`,
  uncertainty: 'Standard uncertainty',
  from: { reading: 'as stated', 'gauge-study': 'from the gauge study' },
  notKnown: 'not known',
  guard: 'Guard band',
  chance: 'Probability to conform',
  decision: 'Decision',
  risk: (risk: string) => `risk of error ${risk}`,
  sides: 'Left against right on arrival',
  difference: 'Left less right',
  allowed: 'Allowed',
  allowedFrom: {
    blueprint: 'by the blueprint',
    practice: 'half of the tolerance’s width (common practice, no source)',
  },
  noSides: 'No dimension was read on both shoes.',
  sidesFine: (count: number) =>
    `${count} ${count === 1 ? 'difference' : 'differences'} of left and right: none is out or undecided.`,
  sidesHow:
    'The uncertainty of a difference is √2 of one reading’s. A pair is marked only for differences that its blueprint limits.',
  only: 'Only pairs in tolerance',
  without: (count: number, codes: string) =>
    `Read without the ${countPairs(count)} out of tolerance: ${codes}.`,
  withoutNone: 'Read without pairs out of tolerance; there is none.',
  stays: (count: number) =>
    `${countPairs(count)} ${count === 1 ? 'was' : 'were'} not measured against a blueprint and ${count === 1 ? 'stays' : 'stay'}.`,
  isOn: 'All figures of this project are read so, until this is switched off.',
  outPairs: (codes: string) => `Out of tolerance on arrival: ${codes}.`,

  takeOver: (round: string) => `Take over blueprint, last and layers of ${round}`,
  takenOver: (round: string) =>
    `Blueprint, last and layers are those of ${round}: change what is different.`,
  both: 'both',
  table: {
    hint: 'A block copied from a spreadsheet can be pasted into any cell. Arrow keys, Enter and Tab go from cell to cell. Tolerances are in the unit, or in percent of nominal such as 5%.',
    columns: {
      measure: 'Measure',
      site: 'Site',
      nominal: 'Nominal',
      lower: 'Tolerance −',
      upper: 'Tolerance +',
      unit: 'Unit',
      foot: 'Foot',
      leftRight: 'Left to right, at most',
    },
    row: 'Row',
    cell: (column: string, row: number) => `${column}, row ${row}`,
    addRow: 'Add a row',
    removeRow: (row: number) => `Remove row ${row}`,
    added: 'Row added.',
    removed: (row: number) => `Row ${row} removed.`,
    pasted: 'Pasted.',
    pastedBut: (cells: number) =>
      `Pasted, but ${cells} ${cells === 1 ? 'cell' : 'cells'} did not fit the columns and ${cells === 1 ? 'was' : 'were'} left out.`,
    undone: 'Undone.',
    unknown: (word: string) => `“${word}” is not known here: choose one.`,
    belowMinus: 'This is below tolerance −.',
    twice: (row: number) => `Row ${row} is the same dimension.`,
  },
  usual: 'Add a usual dimension',
  usualHint: 'Tolerances of common practice, no source: change them as your drawing says.',
  sites: {
    'internal-length': 'inner length of the shoe',
    'back-height': 'back height',
    'collar-height-medial': 'collar height, medial',
    'collar-height-lateral': 'collar height, lateral',
    'heel-cup-width': 'width of the heel cup',
    'toe-cap-length': 'toe cap length',
    'vamp-length': 'vamp length',
    'eyestay-length': 'eyestay length',
    'eyelet-pitch': 'eyelet pitch',
    'tongue-length': 'tongue length',
    'stitch-margin': 'stitch margin',
    'heel-centre': 'centre of the heel',
    'forefoot-centre': 'centre of the forefoot',
    'sockliner-thickness': 'sockliner thickness',
    'outsole-length': 'outsole length',
    'outsole-width': 'outsole width',
    'last-stick-length': 'stick length of the last',
    'last-ball-girth': 'ball girth of the last',
    'last-instep-girth': 'instep girth of the last',
    'last-bottom-width': 'bottom width of the last',
    'heel-lateral': 'lateral heel',
    'heel-medial': 'medial heel',
    'forefoot-lateral': 'lateral forefoot',
    'forefoot-medial': 'medial forefoot',
    shoe: 'one shoe',
  } as Readonly<Record<string, string>>,
  last: 'Last',
  lastName: 'Name of the last',
  lastSize: 'Measured at size, mm of foot length',
  lastLength: 'Length of the last, mm',
  lastWidth: 'Width at the ball, mm',
  lastGirth: 'Girth at the ball, mm',
  widthStep: 'Width more per 5 mm, mm',
  girthStep: 'Girth more per 5 mm, mm',
  lastLine: (name: string, size: string, parts: string) => `Last ${name} at ${size} mm: ${parts}`,
  lastParts: {
    length: (mm: string, eu: string, uk: string) =>
      `length ${mm} mm (EU ${eu}, UK ${uk} by last length)`,
    width: (mm: string) => `width ${mm} mm`,
    girth: (mm: string) => `girth ${mm} mm`,
  },
  layers: 'Layers of material',
  layersHint: 'Counted on the sample, zone by zone; empty: not counted.',

  layersTitle: 'Layers of material against heat and wet',
  layersNone: 'No layers are counted for this round: note them with the round.',
  layersZone: 'Zone',
  layersCount: 'Layers',
  layersRuns: 'Hot or wet, of asked runs',
  layersTesters: 'Testers',
  layersAsked: (askedRuns: number, askedTesters: number) =>
    `${countRuns(askedRuns)} of ${countTesters(askedTesters)} were asked about all zones.`,
  layersNobody: 'Nobody was asked.',
  layersFound: {
    more: 'Zones with more layers were called hot or wet more often',
    less: 'Zones with more layers were called hot or wet less often',
    neither: 'That layers and hot or wet runs go together is not shown',
  },
  layersFigures: (found: string, tau: string, p: string, zones: number) =>
    `${found}: Kendall’s τ ${tau} over ${zones} zones (p ${p}, normal approximation). At best a hint where to look: zones of one foot are not independent, and the air’s warmth is not in it.`,
  layersWhy: {
    'nobody-asked': () => 'Nobody was asked, so nothing can be said of heat and wet.',
    'too-few-zones': (zones: number) =>
      `Layers are counted in ${zones} ${zones === 1 ? 'zone' : 'zones'}: at least five are needed before their order tells anything.`,
    'same-layers': (zones: number) => `All ${zones} zones have as many layers.`,
    'same-shares': (zones: number) =>
      `All ${zones} zones were called hot or wet equally often, so there is no order to compare.`,
  },

  gauges: 'Gauge studies',
  gaugesNone:
    'No gauge study yet. Without one, or an uncertainty stated with the reading, no dimension is proved in or out.',
  gaugeAdd: 'Add a gauge study',
  gaugeOf: (gauge: string, what: string, date: string) => `${gauge}: ${what}, ${date}`,
  anySite: 'every site',
  everySite: 'empty: every site of the measure',
  toleranceWidth: 'Width of the tolerance to decide',
  parts: 'Parts',
  operators: 'Operators',
  trials: 'Trials',
  part: (at: number) => `Part ${at}`,
  operator: (at: number) => `Operator ${at}`,
  trial: (at: number) => `trial ${at}`,
  cell: (operator: string, trial: number, part: string) => `${operator}, trial ${trial}, ${part}`,
  operatorName: (at: number) => `Name of operator ${at}`,
  sameName: 'Another operator has this name.',
  tooFew: 'At least four readings are needed: two parts, each read twice.',
  gridHint:
    'A block copied from a spreadsheet can be pasted into any cell. Arrow keys, Enter and Tab go from cell to cell.',
  typeIn: 'Type the readings',
  grid: 'Readings by operator, trial and part',
  paste: 'Or paste a table: part, operator, value; one reading a line, with a heading',
  gaugeFile: 'Or choose a table (CSV)',
  gaugeRead: (readings: number, parts: number, operators: number) =>
    `${readings} readings of ${parts} parts by ${operators} operators.`,
  gaugeTroubles: {
    'missing-column': (line: number, column: string) =>
      `Line ${line}: the column ${column} is missing.`,
    'no-number': (line: number, column: string) => `Line ${line}, ${column}: not a number.`,
    'no-name': (line: number, column: string) => `Line ${line}, ${column}: this is missing.`,
    'too-many': (line: number) => `Line ${line}: more than 1000 readings.`,
  },
  gaugeTemplate: 'Save an empty table',
  gaugeWord: {
    good: 'good',
    conditional: 'conditional',
    'not-good-enough': 'not good enough',
  },
  gaugeVerdict: (word: string, share: string, of: string) =>
    `The gauge is ${word}: ${share} ${of}.`,
  gaugeOfWhat: {
    tolerance: 'of the tolerance',
    total: 'of the study’s spread',
  },
  gaugeRule:
    'Below 10 % is good, to 30 % conditional (AIAG, Measurement Systems Analysis, 4th ed. 2010). By the tolerance where its width is given: six standard deviations of the gauge against it.',
  gaugeUncertainty: (sd: string, lower: string, upper: string, unit: string) =>
    `Its standard uncertainty is ${sd} ${unit} (95 % interval ${lower} to ${upper}), and it is used for readings of this kind with this gauge that state none.`,
  gaugeDesign: (parts: number, operators: number, trials: number) =>
    `${parts} parts, ${operators} operators, ${trials} trials each.`,
  pooled: (p: string) =>
    `Operators and parts do not interact noticeably (p ${p}, above 0.25): pooled with repeatability.`,
  notPooled: (p: string) =>
    `Operators read some parts unlike each other (interaction p ${p}): counted with the operators.`,
  categories: (count: number) =>
    `Distinct categories of parts that it tells apart: ${count}${count < 5 ? '; five are asked for' : ''}.`,
  above: (list: string) => `Unlike the rest (range above its limit): ${list}.`,
  noRanges: 'Average and range is left out: beyond the handbook’s constants.',
  method: 'Method',
  methods: { anova: 'Analysis of variance', ranges: 'Average and range' },
  repeatability: 'Repeatability',
  reproducibility: 'Reproducibility',
  gaugeTotal: 'Gauge',
  partSpread: 'Parts',
  shareOfTotal: 'Of the spread',
  shareOfTolerance: 'Of the tolerance',
  gaugeWhy: {
    'too-few-parts': 'At least two parts are needed, better ten.',
    'too-few-operators': 'At least two operators are needed, better three.',
    'too-few-trials': 'Every operator must read every part at least twice.',
    'nothing-varies': 'All readings are the same: the gauge shows no difference at all.',
  },
  gaugeUnbalanced: (operator: string, part: string, have: number, need: number) =>
    `${operator} read ${part} ${have} ${have === 1 ? 'time' : 'times'}, others ${need}: every operator must read every part equally often.`,

  feet: 'Feet, lasts and sizes',
  feetNone: 'No tester of this project yet.',
  foot: 'Foot length, mm',
  footWidth: 'Width, mm',
  footGirth: 'Ball girth, mm',
  widthField: 'Foot width at the ball, mm (left / right)',
  girthField: 'Ball girth, mm (left / right)',
  asymmetry: 'Left less right, mm',
  size: 'Size of the longer foot',
  between: (step: string) => `between two sizes of ${step} mm`,
  nearest: (mm: string, step: string) => `${mm} (steps of ${step} mm)`,
  inLast: 'Feet in the lasts they wear',
  pair: 'In pair',
  toe: 'Toe allowance, mm',
  widthOver: 'Last less foot, width, mm',
  girthOver: 'Last less foot, girth, mm',
  toes: { short: 'short', usual: 'usual', long: 'long' },
  noLast: 'no last noted',
  leftThenRight: 'left / right',
  notMeasured: 'not measured',
  betweenCount: (between: number, measured: number, step: string) =>
    `${between} of ${measured} measured testers lie between two sizes of ${step} mm.`,
  coverage: {
    length: 'foot length',
    width: 'foot width',
  },
  coverageLine: (what: string, from: string, to: string, inside: number, measured: number) =>
    `The brief is for a ${what} of ${from} to ${to} mm; ${inside} of ${measured} measured testers lie in it.`,
  coverageEmpty: (list: string) => `Nobody between ${list}.`,
  coverageFull: 'Every step of 5 mm has a tester.',
  coverageNot: (count: number, what: string) =>
    `The ${what} of ${countTesters(count)} was not measured.`,
  stretch: (from: string, to: string) => `${from} and ${to} mm`,
  noRange: (what: string) => `The brief names no range of ${what}.`,
  feetHow:
    'Sizes by ISO 9407 (steps of 5 or of 7.5 mm); EU, UK and US (M men’s, W women’s) by the open arithmetic; makers differ by half a size. The last is graded by 5 mm of length a size. A toe allowance of 10 to 15 mm is usual in running shoes (common practice, no source). A foot counts as between sizes when it is nearer to the middle than to either (judgement).',
  briefFeet: 'Feet that the shoe is for',
  lengthFrom: 'Foot length from, mm',
  lengthTo: 'Foot length to, mm',
  widthFrom: 'Foot width from, mm',
  widthTo: 'Foot width to, mm',
};
