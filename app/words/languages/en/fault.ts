/** The fault screen. It stands in index.html, so it must be short, and knows nothing of what went wrong but its kind. */
export const fault = {
  title: {
    store: 'Pairlog cannot save on this device',
    code: 'A part of Pairlog did not arrive',
    broken: 'Pairlog has stopped',
  },
  why: {
    store: 'The browser refuses its storage.',
    code: 'There is no network, or a newer version has just taken over.',
    broken: 'The fault is in Pairlog, not in what you did.',
  },
  kept: 'What you saved before is still there: this screen has changed nothing.',
  storeSteps: [
    'Leave private browsing, then open Pairlog again.',
    'Is the device full? Free some space, then reload.',
  ],
  otherSteps: [
    'Check that you have a network, then reload.',
    'Close Pairlog wherever it is open, then open it again.',
  ],
  tell: 'Still here? Note your run on paper, and send your lead this line:',
  sign: { store: 'storage refused', code: 'part not fetched', broken: 'stopped' },
  reload: 'Reload',
  send: 'Send my log as a file',
  sendHint: 'The file of your log has no photos or tracks: they stay on this device.',
};
