/** Notices on a closed phone, and reminders: the cards on Today, the part in Settings, and what the phone itself shows. */
export const notices = {
  /** What the phone shows while Pairlog is closed. It says nothing else, whatever the notice is. */
  shown: { title: 'Open Pairlog', body: 'There is a notice for you.' },
  ask: {
    title: 'Get notices even when Pairlog is closed',
    why: 'When a pair must not be worn any more, or your lead asks you something, this phone can tell you. It only says “Open Pairlog”, never what it is about.',
    turnOn: 'Turn notices on',
    later: 'Not now',
    isOn: 'Notices are on. You can turn them off in Settings.',
  },
  settings: {
    title: 'Notices',
    what: 'Only for a pair that must not be worn any more, and for questions from your lead. The message goes through the push service of your browser and only says “Open Pairlog”.',
    isOn: 'On: this phone tells you even when Pairlog is closed.',
    isOff: 'Off: you see notices when you open Pairlog.',
    turnOn: 'Turn notices on',
    turnOff: 'Turn notices off',
    blocked:
      'You have blocked notices for Pairlog. Allow them in the settings of your phone or browser, then come back.',
    homeScreen:
      'On an iPhone or iPad this works only from the home screen, with iOS 16.4 or newer: tap Share, then Add to Home Screen, and open Pairlog from there.',
    noSupport: 'This browser cannot do it. You see notices when you open Pairlog.',
    noHub: 'Your group works by files, so nothing can reach a closed phone.',
    revoked: 'This phone is no longer signed in, so nothing can reach it.',
    failed:
      'It did not work: there is no network, or this browser has no push service. Try again later.',
  },
  reminders: {
    title: 'Reminders',
    what: 'If you have usually logged a run by this time and have not, Today says so: once a day at most, three days in a row at most. This phone works it out by itself.',
    pace: (days: number, hour: string) =>
      days === 1
        ? `You log every day, mostly around ${hour}.`
        : `You log about every ${days} days, mostly around ${hour}.`,
    noPace: 'It starts once you have logged runs on four days or so.',
    isOn: (pace: string) => `On. ${pace}`,
    isOff: (pace: string) => `Off. ${pace}`,
    turnOn: 'Turn reminders on',
    turnOff: 'Turn reminders off',
    badge:
      'While Pairlog is closed, its icon can show a 1. Your browser decides how often it looks.',
    onlyOpen:
      'This browser does nothing while Pairlog is closed, so you see the reminder when you open it.',
  },
  askReminders: {
    title: 'Remember to log?',
    why: (pace: string) =>
      `${pace} If nothing is logged by then, Today can remind you, once a day at most.`,
    turnOn: 'Remind me',
    no: 'No, thanks',
    isOn: 'Reminders are on. You can turn them off in Settings.',
  },
  due: {
    title: (days: number) => (days === 1 ? 'No run since yesterday' : `No run for ${days} days`),
    ask: 'If you ran, log it now.',
    close: 'Not today',
  },
};
