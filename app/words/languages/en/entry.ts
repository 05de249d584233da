import type { GpxProblem } from '../../../../core/track/index.ts';

/** What is said of an entry while it is typed and before it is saved. */
export const entry = {
  timeHint: 'Digits are enough: 10500 is 1:05:00.',
  understood: (h: string, m: string, s: string, pace: string, unit: string) =>
    `${h && `${h} h `}${m} min ${s} s${pace && `, ${pace} per ${unit}`}`,
  wrongDistance: (example: string) => `How far was it? For example ${example}.`,
  wrongTime: 'That is no time. For example 52:30, 10500 or 1 h 05 min.',
  wrongTemperature: 'That is no temperature. For example 14.',
  wrongWhen: 'When did it start? Date and time.',
  aheadOfNow: 'This is in the future: when did it start?',
  doubt: (distance: string, time: string | null) =>
    `${distance}${time === null ? '' : ` in ${time}`}: is that right?`,
  doubtDay: (pair: string, when: string) =>
    `By the log, pair ${pair} was not with you then: ${when}. Is the day right?`,
  doubtPair: (pair: string, when: string, others: string) =>
    `By the log, pair ${pair} was not with you then: ${when}. You had ${others}. Is it the right pair?`,
  doubtTwice: (distance: string, pair: string, when: string) =>
    `You already logged ${distance} in ${pair}, started ${when}. Is this another run?`,
  doubtClock: (phone: string, others: string) =>
    `This phone says it began ${phone}, your group’s clock ${others}. Is the phone right?`,
  doubtSame: 'Same run: drop this one',
  doubtSure: 'Yes, save it',
  doubtChange: 'Change it',
  /** A line with the good point in the middle. */
  twoSided: {
    title: 'Too much or too little?',
    hint: 'The good point is in the middle.',
    right: 'just right',
    clear: 'Clear',
    /** "a little too soft", "slips a lot". */
    degree: (degree: 'little' | 'too' | 'far', end: string): string => {
      if (degree === 'too') return end;
      if (!end.includes('too ')) return `${end} ${degree === 'little' ? 'a little' : 'a lot'}`;
      return end.replace('too ', degree === 'little' ? 'a little too ' : 'far too ');
    },
    ends: (unanswered: string, low: string, high: string) =>
      `${unanswered}; left: ${low}, middle: just right, right: ${high}`,
  },
  limit: {
    left: (count: number) => `${count} ${count === 1 ? 'character' : 'characters'} left`,
    reached: (most: string) => `The limit of ${most} characters is reached.`,
    cut: (most: string, cut: string) =>
      `The limit of ${most} characters is reached: the last ${cut} of what you pasted did not fit.`,
  },

  track: {
    add: 'Track (GPX file)',
    title: 'Track',
    moving: (time: string) => `moving ${time}`,
    climb: (metres: string) => `climb ${metres} m`,
    made: {
      smoothed:
        'On the WGS84 ellipsoid, noise taken out, bends between fixes put in. Standing does not count; climb from 3 m.',
      'as-recorded':
        'On the WGS84 ellipsoid, bends between fixes put in. Standing does not count; climb from 3 m.',
    },
    noTimes:
      'This file has no usable times: they are missing, or all the same. Only the distance was taken. Type your time above.',
    skipped: (points: number) =>
      points === 1
        ? 'One point has an impossible place and was left out. Check the distance.'
        : `${points} points have an impossible place and were left out. Check the distance.`,
    again: (when: string) => `This track was logged before, as the run of ${when}.`,
    differs: (track: string, typed: string, percent: string) =>
      `The track says ${track}, you typed ${typed} (${percent} %). Both are kept; what stands above counts.`,
    useTrack: 'Take the track’s',
    paint: 'Surfaces along the way',
    base: 'The surface chosen below holds wherever nothing else is painted.',
    from: (unit: string) => `From ${unit}`,
    to: (unit: string) => `To ${unit}`,
    surface: 'Surface there',
    paintIt: 'Paint',
    clean: 'Take the paint off',
    stretch: (from: string, to: string, surface: string) => `${from} to ${to}: ${surface}`,
    openMap: 'Open the map',
    mapOf: 'Map of the run; the stretches are listed above',
    tiles: (host: string) => `The ground comes from ${host}, which sees where you look.`,
    north: 'N',
    tapFirst: 'Tap the line where another surface begins.',
    tapSecond: 'Tap where it ends.',
    chooseSurface: 'What is it between the two marks?',
    unknown: 'not said',
    send: 'Send the track to my lead',
    sendHint: (metres: string, times: 'exact' | 'minutes') =>
      `Otherwise it stays on this phone. What is sent lacks the first and last ${metres} m and everything that near to either end${times === 'minutes' ? ', and its times are whole minutes' : ''}.`,
    choosePair: 'In which pair was this run?',
    wrong: {
      'not-gpx': () => 'This is no GPX file. Export the run from your watch as GPX.',
      'broken-xml': (line: number) => `The file is damaged at line ${line}. Export it anew.`,
      doctype: () => 'The file has a document type, which no watch writes. It was not opened.',
      'too-deep': () => 'The file is nested as no track is. It was not opened.',
      'too-large': () => 'The file is too large: at most 50 million characters.',
      'too-many-points': () => 'The track has more than half a million points.',
      'no-track': () =>
        'There is no track in this file, only places or a route. Export the run itself as GPX.',
      'no-points': () => 'There is no recorded point in this file. Export the run again.',
      'no-places': (line: number) =>
        `No point in this file has a possible latitude and longitude; the first is at line ${line}. Export the run again.`,
      'storage-full': () =>
        'This phone has no room for the track. Free some space, then add it again.',
    } as Readonly<Record<GpxProblem['why'] | 'storage-full', (line: number) => string>>,
  },
};
